package akin.engine.equip;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.List;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The shipped JSON Schemas as an editor uses them: on plain YAML 1.2, without knowing anything of Akin. */
public final class Schemas {

    private static final Path FOLDER = ShippedGear.SHARED.resolve("schema");
    private static final String BASE = "https://akin.example/schema/";
    private static final String META = "https://json-schema.org/draft/2020-12/schema";

    private final JsonMapper mapper = JsonMapper.builder().build();
    private final SchemaRegistry registry = SchemaRegistry.withDefaultDialect(
            SpecificationVersion.DRAFT_2020_12,
            builder -> builder.schemas(iri ->
                    iri.startsWith(BASE) ? ShippedGear.text(FOLDER.resolve(iri.substring(BASE.length()))) : null));

    /** The schema of a kind of file, such as {@code rig}, as it is written. */
    public JsonNode node(String name) {
        return mapper.readTree(ShippedGear.text(FOLDER.resolve(name + ".schema.json")));
    }

    /** What the schema of the name has to say against a YAML text. */
    public List<Error> complaints(String name, String yaml) {
        return complaints(name, plain(yaml));
    }

    /** What the schema of the name has to say against a value. */
    public List<Error> complaints(String name, JsonNode value) {
        return schema(BASE + name + ".schema.json").validate(value);
    }

    /** What the standard has to say against the schema of the name. */
    public List<Error> complaintsOfTheStandard(String name) {
        return schema(META).validate(node(name));
    }

    /** A JSON text as a tree. */
    public JsonNode json(String text) {
        return mapper.readTree(text);
    }

    private Schema schema(String iri) {
        return registry.getSchema(SchemaLocation.of(iri));
    }

    private JsonNode plain(String yaml) {
        LoadSettings settings = LoadSettings.builder()
                .setSchema(new CoreSchema())
                .setAllowDuplicateKeys(true)
                .build();
        return mapper.valueToTree(new Load(settings).loadFromString(yaml));
    }
}
