package dev.kilnledger.examples.report;

import org.jfree.chart.JFreeChart;

/** One chart of a picture, with its height in pixels; a picture stacks one or more of them. */
record Panel(JFreeChart chart, int height) {}
