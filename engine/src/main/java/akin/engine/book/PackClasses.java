package akin.engine.book;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarInputStream;
import org.drools.model.Model;

/** The compiled rules of a pack, loaded from memory beside Akin's own classes. */
public final class PackClasses extends ClassLoader {

    private static final String INDEX =
            "META-INF/kie/" + PackCompiler.GROUP + "/" + PackCompiler.ARTIFACT + "/drools-model";
    private static final String HEADER = "Drools-Model-Version:";
    private static final String CLASS = ".class";

    private final Map<String, byte[]> entries = new HashMap<>();

    /**
     * The classes of a jar that {@link PackCompiler} made.
     *
     * @throws IllegalArgumentException when it is no such jar
     */
    public PackClasses(byte[] jar) {
        super(PackClasses.class.getClassLoader());
        try (JarInputStream in = new JarInputStream(new ByteArrayInputStream(jar))) {
            for (JarEntry entry = in.getNextJarEntry(); entry != null; entry = in.getNextJarEntry()) {
                entries.put(entry.getName(), in.readAllBytes());
            }
        } catch (IOException e) {
            throw new IllegalArgumentException("this is no jar of compiled rules", e);
        }
        if (!entries.containsKey(INDEX)) {
            throw new IllegalArgumentException("this is no jar of compiled rules");
        }
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        byte[] bytes = entries.get(name.replace('.', '/') + CLASS);
        if (bytes == null) {
            throw new ClassNotFoundException(name);
        }
        return defineClass(name, bytes, 0, bytes.length);
    }

    /**
     * The rules, made anew with each call: a rule base keeps what it is made from.
     *
     * @throws IllegalArgumentException when a class that the jar names is not in it, or does not fit this Akin
     */
    public List<Model> models() {
        List<Model> models = new ArrayList<>();
        for (String line : new String(entries.getOrDefault(INDEX, new byte[0]), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.isBlank() && !line.startsWith(HEADER))
                .toList()) {
            try {
                models.add(loadClass(line)
                        .asSubclass(Model.class)
                        .getDeclaredConstructor()
                        .newInstance());
            } catch (ReflectiveOperationException | LinkageError e) {
                throw new IllegalArgumentException("these compiled rules do not fit", e);
            }
        }
        return models;
    }
}
