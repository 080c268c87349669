/**
 * What a part uses up, and how: {@link dev.kilnledger.costing.resource.Durable} is bought once,
 * {@link dev.kilnledger.costing.resource.Wearing} lasts for so many uses, {@link
 * dev.kilnledger.costing.resource.ToppedUp} loses a share each firing, {@link
 * dev.kilnledger.costing.resource.RunDown} is replaced as a whole when too little is left, {@link
 * dev.kilnledger.costing.resource.Consumed} is gone. A {@link
 * dev.kilnledger.costing.resource.Driver} says what drives it; its {@link
 * dev.kilnledger.costing.resource.Staircase} counts the packs through any part in closed form.
 */
@NullMarked
package dev.kilnledger.costing.resource;

import org.jspecify.annotations.NullMarked;
