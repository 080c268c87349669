package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.units.Kind;
import java.util.Optional;

/** Which lines an overhead is a share of. */
public enum OverheadBase {
  /** All lines, before overhead and tax. */
  ALL_COSTS("all costs"),
  /** What is used up or worn: not equipment, nor time, energy and shipping. */
  MATERIAL("material"),
  /** What is paid by time: labour, and machines by the hour. */
  TIME("labour and machine time");

  private final String words;

  OverheadBase(String words) {
    this.words = words;
  }

  /** {@return the base for people, lower case} */
  public String words() {
    return words;
  }

  /** Whether a line belongs to it; shipping belongs to no resource. */
  boolean holds(Offer offer, Optional<Resource> resource) {
    if (this == ALL_COSTS) {
      return true;
    }
    boolean time = offer.content().kind().equals(Kind.TIME);
    if (this == TIME) {
      return time;
    }
    return !time
        && !offer.content().kind().equals(Kind.ENERGY)
        && resource
            .filter(used -> !(used instanceof Durable) && !(used instanceof Depreciated))
            .isPresent();
  }
}
