package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.offer.Offer;
import org.joda.money.BigMoney;

/** A price at which packs of an offer may come: the price of one pack, or that of a break. */
record Priced(Offer offer, BigMoney price) {}
