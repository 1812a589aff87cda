/**
 * Input, plan, rendering and output of duskloom. Knows no effect by name and no command-line option. JOML and
 * hipparchus are read from the class path: see the note in this module's pom.xml.
 */
module org.duskloom.engine {
    requires org.apache.commons.csv;
    requires java.xml;
    requires tools.jackson.core;

    exports org.duskloom.engine.color;
    exports org.duskloom.engine.compare;
    exports org.duskloom.engine.digest;
    exports org.duskloom.engine.display;
    exports org.duskloom.engine.document;
    exports org.duskloom.engine.effect;
    exports org.duskloom.engine.file;
    exports org.duskloom.engine.film;
    exports org.duskloom.engine.find;
    exports org.duskloom.engine.font;
    exports org.duskloom.engine.format;
    exports org.duskloom.engine.frame;
    exports org.duskloom.engine.geometry;
    exports org.duskloom.engine.group;
    exports org.duskloom.engine.live;
    exports org.duskloom.engine.locate;
    exports org.duskloom.engine.locate.picture;
    exports org.duskloom.engine.map;
    exports org.duskloom.engine.meter;
    exports org.duskloom.engine.meter.light;
    exports org.duskloom.engine.packet;
    exports org.duskloom.engine.plan;
    exports org.duskloom.engine.png;
    exports org.duskloom.engine.preview;
    exports org.duskloom.engine.problem;
    exports org.duskloom.engine.proof;
    exports org.duskloom.engine.random;
    exports org.duskloom.engine.render;
    exports org.duskloom.engine.report;
    exports org.duskloom.engine.report.page;
    exports org.duskloom.engine.schema;
    exports org.duskloom.engine.shard;
    exports org.duskloom.engine.sheet;
    exports org.duskloom.engine.show;
    exports org.duskloom.engine.sound;
    exports org.duskloom.engine.sound.music;
    exports org.duskloom.engine.survey;
    exports org.duskloom.engine.survey.fit;
    exports org.duskloom.engine.survey.text;
    exports org.duskloom.engine.text;
    exports org.duskloom.engine.time;
    exports org.duskloom.engine.timeline;
    exports org.duskloom.engine.wire;

    uses org.duskloom.engine.effect.Effect;
}
