/**
 * What a builder is told of a show: figures gathered in a {@link org.duskloom.engine.report.Report}, and the ways to
 * write one down. Times are seconds, currents amperes, voltages volts, lengths metres. The last stop of the flow: takes
 * what {@code meter} has measured, the display and the plan. Each way of writing takes the whole report and nothing
 * else, so that a page, a table and a file for programs cannot disagree.
 */
package org.duskloom.engine.report;
