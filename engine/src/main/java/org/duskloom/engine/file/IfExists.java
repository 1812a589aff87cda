package org.duskloom.engine.file;

/** What to do about a file that already stands under the name of an output. */
public enum IfExists {
    /** Leave it alone and end with an {@link OutputRefusedException}. */
    REFUSE,
    /** Put the new file in its place, once that is complete. */
    REPLACE
}
