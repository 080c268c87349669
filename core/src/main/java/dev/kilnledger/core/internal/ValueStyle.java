package dev.kilnledger.core.internal;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.immutables.serial.Serial;
import org.immutables.value.Value;

/**
 * The one style of the value types: the generated class is hidden behind its interface, needs
 * nothing but the JDK, and carries no annotation that a consumer's compiler would miss.
 */
@Target(ElementType.TYPE)
@Serial.Version(1)
@Retention(RetentionPolicy.SOURCE)
@Value.Style(
    visibility = Value.Style.ImplementationVisibility.PACKAGE,
    overshadowImplementation = true,
    jdkOnly = true,
    allParameters = false,
    defaults = @Value.Immutable(copy = false),
    allowedClasspathAnnotations = {Override.class})
public @interface ValueStyle {}
