/** What checks answer with: findings, and the cautions that go with a hazard. */
@NullMarked
@Serial.Version(1)
package dev.kilnledger.core.finding;

import org.immutables.serial.Serial;
import org.jspecify.annotations.NullMarked;
