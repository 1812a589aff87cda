package org.duskloom.effects.kit.area;

/** One picture. */
record SingleReel(LightImage only) implements Reel {
    @Override
    public int width() {
        return only.width();
    }

    @Override
    public int height() {
        return only.height();
    }

    @Override
    public int count() {
        return 1;
    }

    @Override
    public LightImage image(int index) {
        return only;
    }
}
