package org.duskloom.engine.architecture.bad.render;

/** Lies in a late package. */
public record Late(int number) {}
