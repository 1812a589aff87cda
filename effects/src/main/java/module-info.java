/** The effects of duskloom, each a service that the engine's registry finds. */
module org.duskloom.effects {
    requires transitive org.duskloom.engine;
}
