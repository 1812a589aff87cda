package org.duskloom.cli;

/** Entry point of the program. */
public final class Main {
    private Main() {}

    /** Runs the program. */
    public static void main(String[] args) {}
}
