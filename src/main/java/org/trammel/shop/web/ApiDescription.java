package org.trammel.shop.web;

import io.swagger.v3.core.jackson.ModelResolver;
import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.ObjectSchema;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.media.StringSchema;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.responses.ApiResponses;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springdoc.core.providers.ObjectMapperProvider;
import org.springdoc.core.utils.SpringDocUtils;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.web.csrf.CsrfToken;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** What the description of the API says of all its parts. */
@Configuration(proxyBeanMethods = false)
class ApiDescription {

    private static final String CONVENTIONS = """
            Everything a sheet can do, with the same checks.

            **Units**: lengths in mm, angles in degrees, temperatures in °C, times in ISO 8601 (UTC). A unit that differs \
            stands in the name, such as `filmThicknessMicrometres`. Figures carry a decimal point.

            **Acts**: whatever changes something needs an act id, a UUID the client makes: the property or form field \
            `actId`, or the header `Act-Id`. The same act sent twice is carried out once; sent \
            again with other content it is refused with 422 and what came first stands. `deviceAt` (header `Device-At`) \
            is the client's own time.

            **Refusals** are problem documents (RFC 9457): `title` says what was not done, `detail` why, `instead` what \
            to do, `field` which input is at fault. 422 unreadable input, 409 the state does not allow it or somebody \
            else was faster, 403 not for this person, 404 no such thing, 428 unlikely: send it again with \
            `confirm` = true.""";

    static {
        // What the service finds out by itself is no input of a caller.
        SpringDocUtils.getConfig().addRequestWrapperToIgnore(Act.class, SignedOn.class, CsrfToken.class);
        SpringDocUtils.getConfig().replaceWithSchema(Refusal.class, problem());
    }

    @Bean
    OpenAPI description() {
        return new OpenAPI().info(new Info().title("Trammel").version("v1").description(CONVENTIONS));
    }

    @Bean
    ModelResolver shapesByModule(ObjectMapperProvider mappers) {
        return new ModelResolver(mappers.jsonMapper(), new SchemaNames());
    }

    @Bean
    OpenApiCustomizer refusalsEverywhere() {
        return api -> {
            if (api.getPaths() == null) {
                return;
            }
            // Here and not before: what nothing refers to yet is taken out of the description again.
            Components components = api.getComponents() == null ? new Components() : api.getComponents();
            api.setComponents(components.addSchemas("Problem", problem()));
            api.getPaths()
                    .values()
                    .forEach(path -> path.readOperations().forEach(operation -> {
                        ApiResponses answers =
                                operation.getResponses() == null ? new ApiResponses() : operation.getResponses();
                        answers.addApiResponse("default", refusal());
                        operation.setResponses(answers);
                    }));
        };
    }

    private static ApiResponse refusal() {
        Schema<?> schema = new Schema<>().$ref("#/components/schemas/Problem");
        return new ApiResponse()
                .description("Refused, in three parts")
                .content(new Content().addMediaType("application/problem+json", new MediaType().schema(schema)));
    }

    private static Schema<?> problem() {
        return new ObjectSchema()
                .description("A refusal (RFC 9457)")
                .addProperty("type", new StringSchema().example("urn:trammel:refusal:state"))
                .addProperty("title", new StringSchema().description("What was not done"))
                .addProperty("status", new Schema<Integer>().type("integer"))
                .addProperty("detail", new StringSchema().description("Why, with the facts"))
                .addProperty("instance", new StringSchema())
                .addProperty("instead", new StringSchema().description("What to do instead"))
                .addProperty("field", new StringSchema().description("The input at fault, if one is"));
    }
}
