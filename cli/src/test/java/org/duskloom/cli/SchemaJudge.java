package org.duskloom.cli;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.schema.DocumentSchema;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a schema says of a file: by a validator of others (com.networknt:json-schema-validator, draft-07). */
final class SchemaJudge {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
            .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
            .build();
    private static final SchemaRegistry REGISTRY = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7);

    private final Schema schema;

    SchemaJudge(DocumentSchema kind) {
        this.schema = REGISTRY.getSchema(json(kind));
    }

    static String json(DocumentSchema kind) {
        return kind.json(EffectRegistry.installed());
    }

    /** A file with its remarks taken out. */
    static JsonNode tree(String json) {
        return MAPPER.readTree(json);
    }

    /** What is wrong, each with its place; empty where the schema has nothing against it. */
    List<String> faults(JsonNode file) {
        return schema.validate(file).stream().map(Error::toString).toList();
    }

    boolean refuses(JsonNode file) {
        return !schema.validate(file).isEmpty();
    }
}
