/**
 * A whole firing computed: {@link dev.kilnledger.thermal.firing.FiringSetup} says what is fired and
 * how, {@link dev.kilnledger.thermal.firing.FiringForecast} what comes of it - what the kiln really
 * does, what the part feels of that, when the binder is gone, how dense the metal gets, whether the
 * getter lasts, and what gas gets into the room. {@code thermal.check} holds it against rules.
 */
@NullMarked
package dev.kilnledger.thermal.firing;

import org.jspecify.annotations.NullMarked;
