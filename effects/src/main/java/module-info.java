/** The effects of duskloom, each a service that the engine's registry finds. */
module org.duskloom.effects {
    requires java.desktop;
    requires transitive org.duskloom.engine;

    provides org.duskloom.engine.effect.Effect with
            org.duskloom.effects.chase.Chase,
            org.duskloom.effects.drift.Drift,
            org.duskloom.effects.festoon.Festoon,
            org.duskloom.effects.lettering.Lettering,
            org.duskloom.effects.morph.Morph,
            org.duskloom.effects.gauge.Gauge,
            org.duskloom.effects.image.Image,
            org.duskloom.effects.pile.Pile,
            org.duskloom.effects.swell.Swell,
            org.duskloom.effects.radiate.Radiate,
            org.duskloom.effects.shower.Shower,
            org.duskloom.effects.spin.Spin,
            org.duskloom.effects.sweep.Sweep,
            org.duskloom.effects.twinkle.Twinkle,
            org.duskloom.effects.wash.Wash;
}
