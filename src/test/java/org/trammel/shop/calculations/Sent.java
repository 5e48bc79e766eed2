package org.trammel.shop.calculations;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import com.jayway.jsonpath.DocumentContext;
import com.jayway.jsonpath.JsonPath;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.result.MockMvcResultMatchers;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Signed;

/** What a program sends to the computations. */
record Sent(MockMvc mvc, Person person) {

    ResultActions to(String name, String body) throws Exception {
        return mvc.perform(post("/api/v1/calculations/" + name)
                .contentType(MediaType.APPLICATION_JSON)
                .content(body)
                .with(Signed.on(person))
                .with(csrf()));
    }

    DocumentContext computed(String name, String body) throws Exception {
        return JsonPath.parse(to(name, body)
                .andExpect(MockMvcResultMatchers.status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString());
    }

    /** A figure of an answer, whole numbers too. */
    static double figure(DocumentContext answer, String path) {
        return answer.read(path, Number.class).doubleValue();
    }
}
