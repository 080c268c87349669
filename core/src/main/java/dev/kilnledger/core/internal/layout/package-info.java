/** How equal circles and rectangles lie in a circle or a rectangle; metres, the middle is zero. */
@NullMarked
package dev.kilnledger.core.internal.layout;

import org.jspecify.annotations.NullMarked;
