/** What all readers of files share: where bytes come from, and how they say what is wrong. */
@NullMarked
package dev.kilnledger.core.reading;

import org.jspecify.annotations.NullMarked;
