package org.trammel.shop.people;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.UUID;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** Somebody signed on who opens pages, sends forms and asks the API, each time by a new act. */
public record Asking(MockMvc mvc, RequestPostProcessor who) {

    /** A page that is there. */
    public String page(String path) throws Exception {
        return mvc.perform(get(path).with(who))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    public MockHttpServletRequestBuilder form(String path) {
        return post(path)
                .with(who)
                .with(csrf())
                .param("actId", UUID.randomUUID().toString());
    }

    public MockHttpServletRequestBuilder api(String path, String body) {
        return post(path)
                .with(who)
                .with(csrf())
                .header("Act-Id", UUID.randomUUID().toString())
                .contentType(MediaType.APPLICATION_JSON)
                .content(body);
    }
}
