package org.trammel.shop.invented;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import jakarta.servlet.http.Cookie;
import java.net.URI;
import java.util.Objects;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.AbstractMockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMultipartHttpServletRequestBuilder;

/** Somebody at a desk or a tablet: opens pages and sends their forms, and has nothing but the cookie of the device. */
public final class Hand {

    private static final Pattern REFUSAL = Pattern.compile("(?s)id=\"refusal\">(.*?)</div>");

    private final MockMvc mvc;
    private final MockHttpSession browser = new MockHttpSession();
    private @Nullable Cookie device;
    private String lastAct = "";
    private String looksAt = "/";

    public Hand(MockMvc mvc) {
        this.mvc = mvc;
    }

    public MockHttpServletResponse open(String path) throws Exception {
        MockHttpServletResponse answer = sent(get(URI.create(path)));
        if (answer.getStatus() == 200) {
            looksAt = path;
        }
        return answer;
    }

    /** A page, whatever its status. */
    public String page(String path) throws Exception {
        return open(path).getContentAsString();
    }

    /** Sends a form of name and value pairs and expects to be led on; gives where to. */
    public String form(String path, String... pairs) throws Exception {
        return ledOn(sent(filled(post(URI.create(path)), pairs)));
    }

    /** The same, with a file. */
    public String file(String path, MockMultipartFile file, String... pairs) throws Exception {
        MockMultipartHttpServletRequestBuilder request = multipart(URI.create(path));
        request.file(file);
        return ledOn(sent(filled(request, pairs)));
    }

    /** Sends a form whose answer is a page. */
    public String shown(String path, String... pairs) throws Exception {
        MockHttpServletResponse answer = sent(filled(post(URI.create(path)), pairs));
        assertThat(answer.getStatus()).as(path + refusalIn(answer)).isEqualTo(200);
        return answer.getContentAsString();
    }

    /** Id of the act sent last. */
    public String lastAct() {
        return lastAct;
    }

    public Cookie device() {
        return Objects.requireNonNull(device);
    }

    /** Another browser on the same device. */
    public Hand again() {
        Hand hand = new Hand(mvc);
        hand.device = device;
        return hand;
    }

    private <B extends AbstractMockHttpServletRequestBuilder<B>> B filled(B request, String... pairs) {
        lastAct = UUID.randomUUID().toString();
        request.param("actId", lastAct)
                .header(HttpHeaders.REFERER, "http://localhost" + looksAt)
                .header(HttpHeaders.HOST, "localhost")
                .with(csrf());
        for (int i = 0; i < pairs.length; i += 2) {
            request.param(pairs[i], pairs[i + 1]);
        }
        return request;
    }

    private MockHttpServletResponse sent(AbstractMockHttpServletRequestBuilder<?> request) throws Exception {
        if (device != null) {
            request.cookie(device);
        }
        MockHttpServletResponse answer =
                mvc.perform(request.session(browser)).andReturn().getResponse();
        Cookie given = answer.getCookie("trammel-device");
        if (given != null) {
            device = given;
        }
        return answer;
    }

    private String ledOn(MockHttpServletResponse answer) throws Exception {
        String to = answer.getRedirectedUrl();
        assertThat(answer.getStatus()).as(refusalIn(answer)).isIn(302, 303);
        assertThat(to).isNotNull();
        String path = to.replace("http://localhost", "");
        MockHttpServletResponse next = open(path);
        assertThat(refusalIn(next)).as(path).isEmpty();
        return path;
    }

    /** The words of the refusal on a page; empty if there is none. */
    static String refusalIn(MockHttpServletResponse answer) throws Exception {
        Matcher words = REFUSAL.matcher(answer.getContentAsString());
        return words.find() ? words.group(1).replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ") : "";
    }
}
