/**
 * The value syntax that colours and easing curves share: numbers, percentages, numbers with a unit, words, and one
 * function round them, after W3C CSS Syntax Module Level 3. Knows no function by name. Not exported: only the parsers
 * of times and colours use it.
 */
package org.duskloom.engine.css;
