/**
 * Addresses and groups: which pixels, in which order, a text such as {@code daisy-*}{@code /rim} or {@code garden}
 * means. An address list resolves to members, each a prop or a part of one, in order and without repeats. Pixels are
 * given as global indices from 0. Uses {@code problem}, {@code document} and {@code map}; the planner asks it for the
 * members of every cue.
 */
package org.duskloom.engine.group;
