package org.duskloom.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version that the build put into a file beside this class. */
final class Version implements IVersionProvider {
    Version() {}

    @Override
    public String[] getVersion() throws IOException {
        return new String[] {"duskloom " + number()};
    }

    /** The number alone. */
    static String number() throws IOException {
        Properties properties = new Properties();
        try (InputStream file = Version.class.getResourceAsStream("version.properties")) {
            properties.load(file);
        }
        return properties.getProperty("version");
    }
}
