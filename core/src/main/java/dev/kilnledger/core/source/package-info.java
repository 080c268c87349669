/**
 * Where a figure comes from. A {@link dev.kilnledger.core.source.Sourced} holds a value with its
 * condition and its {@link dev.kilnledger.core.source.Source}, whose {@link
 * dev.kilnledger.core.source.Standing} says whether anyone has looked it up; a {@link
 * dev.kilnledger.core.source.Span} is an interval, an {@link dev.kilnledger.core.source.Estimate}
 * an expected value within one. Your own figures are {@link
 * dev.kilnledger.core.source.Source#user}.
 */
@NullMarked
package dev.kilnledger.core.source;

import org.jspecify.annotations.NullMarked;
