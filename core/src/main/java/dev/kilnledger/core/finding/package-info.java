/** What checks answer with: findings, and the cautions that go with a hazard. */
@NullMarked
package dev.kilnledger.core.finding;

import org.jspecify.annotations.NullMarked;
