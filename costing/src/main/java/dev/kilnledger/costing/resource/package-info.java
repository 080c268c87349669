/** What a part uses up, and how: bought once, worn, topped up, run down or consumed. */
@NullMarked
package dev.kilnledger.costing.resource;

import org.jspecify.annotations.NullMarked;
