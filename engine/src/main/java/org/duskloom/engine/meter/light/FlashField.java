package org.duskloom.engine.meter.light;

/** How much of a field of view flashes at the same time. */
interface FlashField {
    /** Where nobody says from how far the display is seen: then any light counts. */
    FlashField UNKNOWN = new FlashField() {
        @Override
        public void look(int[] pixels, int count) {
            // Nothing to be measured.
        }

        @Override
        public double mostShare() {
            return 0;
        }
    };

    /** Looks at the first {@code count} of these pixels, which flash too often at the same time. */
    void look(int[] pixels, int count);

    /** The most so far, as a share of what is allowed. */
    double mostShare();
}
