/** The whole job in one call: from part, feedstock, outfit, route and prices to an answer. */
@NullMarked
package dev.kilnledger.costing.job;

import org.jspecify.annotations.NullMarked;
