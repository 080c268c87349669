package dev.kilnledger.costing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import net.jqwik.api.Property;

/**
 * What must hold for every input. Tried with inputs generated from a fixed seed, so that each build
 * does the same; the smallest counterexample and the seed are printed when it fails.
 */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@Property(seed = "20261125")
public @interface Law {}
