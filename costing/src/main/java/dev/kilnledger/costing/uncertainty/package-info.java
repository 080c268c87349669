/** How sure a cost is: what may vary, how far the cost then varies, and which inputs matter. */
@NullMarked
package dev.kilnledger.costing.uncertainty;

import org.jspecify.annotations.NullMarked;
