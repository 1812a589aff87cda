package org.duskloom.engine.architecture.bad.util;

/** Lies in a package without a purpose. */
public record Things(int number) {}
