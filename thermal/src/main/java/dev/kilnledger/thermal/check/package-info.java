/** Whether a firing can come out: rules that each answer with findings, and their report. */
@NullMarked
package dev.kilnledger.thermal.check;

import org.jspecify.annotations.NullMarked;
