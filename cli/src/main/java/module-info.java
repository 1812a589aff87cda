/** The command line of duskloom. */
module org.duskloom.cli {
    requires info.picocli;
    requires java.desktop;
    requires jdk.httpserver;
    requires org.duskloom.effects;
    requires org.duskloom.engine;

    opens org.duskloom.cli to
            info.picocli;
}
