package org.duskloom.cli;

import java.io.File;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Loads the program anew, libraries left out: what is one for each process is then one for each of these. */
class OwnClasses extends URLClassLoader {
    static {
        registerAsParallelCapable();
    }

    OwnClasses() throws MalformedURLException {
        super(classPath(), OwnClasses.class.getClassLoader());
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        if (!name.startsWith("org.duskloom.")) {
            return super.loadClass(name, resolve);
        }
        synchronized (getClassLoadingLock(name)) {
            Class<?> loaded = findLoadedClass(name);
            return loaded == null ? findClass(name) : loaded;
        }
    }

    private static URL[] classPath() throws MalformedURLException {
        List<URL> urls = new ArrayList<>();
        for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
            urls.add(Path.of(entry).toUri().toURL());
        }
        return urls.toArray(URL[]::new);
    }
}
