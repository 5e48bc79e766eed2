package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import jakarta.servlet.RequestDispatcher;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.http.MediaType;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.web.WebAttributes;
import org.springframework.security.web.csrf.MissingCsrfTokenException;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.web.servlet.resource.ResourceUrlEncodingFilter;
import org.trammel.shop.ShopTest;

@ShopTest
class FaceInServiceTest {

    @Autowired
    private MockMvc mvc;

    @Test
    void aFilesAddressCarriesItsHashAndMayBeKeptForAYear() throws Exception {
        String html = mvc.perform(get("/error")
                        .accept(MediaType.TEXT_HTML)
                        .requestAttr(RequestDispatcher.ERROR_STATUS_CODE, 404)
                        .requestAttr(RequestDispatcher.ERROR_REQUEST_URI, "/nowhere"))
                .andExpect(status().isNotFound())
                .andReturn()
                .getResponse()
                .getContentAsString();
        Matcher address =
                Pattern.compile("href=\"(/css/tokens-[0-9a-f]{32}\\.css)\"").matcher(html);
        assertThat(address.find()).isTrue();
        String css = mvc.perform(get(address.group(1)))
                .andExpect(status().isOk())
                .andExpect(header().string("Cache-Control", org.hamcrest.Matchers.containsString("max-age=31536000")))
                .andReturn()
                .getResponse()
                .getContentAsString();
        Matcher font = Pattern.compile("url\\(\"?(?:\\.\\./fonts/|/fonts/)(b612-latin-400-normal-[0-9a-f]{32}\\.woff2)")
                .matcher(css);
        assertThat(font.find()).as(css.substring(0, 600)).isTrue();
        mvc.perform(get("/fonts/" + font.group(1))).andExpect(status().isOk());
    }

    @Test
    void aPageRunsNothingButOurOwnFilesAndStaysOutOfOtherPages() throws Exception {
        mvc.perform(get("/orders"))
                .andExpect(header().string(
                                "Content-Security-Policy",
                                org.hamcrest.Matchers.allOf(
                                        org.hamcrest.Matchers.containsString("default-src 'self'"),
                                        org.hamcrest.Matchers.containsString("frame-ancestors 'none'"),
                                        org.hamcrest.Matchers.not(org.hamcrest.Matchers.containsString("unsafe")))))
                .andExpect(header().string("X-Content-Type-Options", "nosniff"))
                .andExpect(header().string("Referrer-Policy", "same-origin"))
                .andExpect(
                        header().string("Permissions-Policy", org.hamcrest.Matchers.containsString("camera=(self)")));
    }

    @Test
    void aFaultOutsideAControllerIsAProblemDocumentForAProgram() throws Exception {
        mvc.perform(get("/error")
                        .accept(MediaType.APPLICATION_JSON)
                        .requestAttr(RequestDispatcher.ERROR_STATUS_CODE, 500)
                        .requestAttr(RequestDispatcher.ERROR_REQUEST_URI, "/api/v1/frames"))
                .andExpect(status().isInternalServerError())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
                .andExpect(jsonPath("$.detail").value(org.hamcrest.Matchers.containsString("Incident ")));
    }

    @Test
    void whatIsTooLargeToBeReadAtAllIsToldSo() throws Exception {
        mvc.perform(get("/error")
                        .accept(MediaType.APPLICATION_JSON)
                        .requestAttr(RequestDispatcher.ERROR_STATUS_CODE, 413)
                        .requestAttr(RequestDispatcher.ERROR_REQUEST_URI, "/shop/lots/TL-1/certificate"))
                .andExpect(status().isContentTooLarge())
                .andExpect(jsonPath("$.detail").value(org.hamcrest.Matchers.containsString("20 MB")));
    }

    /** Where no file was sent, nobody is told to make one smaller. */
    @Test
    void whoTypedMoreThanASheetTakesIsToldToWriteLess() throws Exception {
        mvc.perform(get("/error")
                        .accept(MediaType.APPLICATION_JSON)
                        .contentType(MediaType.APPLICATION_FORM_URLENCODED)
                        .requestAttr(RequestDispatcher.ERROR_STATUS_CODE, 413)
                        .requestAttr(RequestDispatcher.ERROR_REQUEST_URI, "/station/AV261019/note"))
                .andExpect(status().isContentTooLarge())
                .andExpect(jsonPath("$.detail").value(org.hamcrest.Matchers.containsString("What was typed")))
                .andExpect(jsonPath("$.instead")
                        .value(org.hamcrest.Matchers.not(org.hamcrest.Matchers.containsString("smaller"))));
    }

    @Test
    void aSheetThatWasOpenTooLongIsToldFromARoleThatDoesNotAllowIt() throws Exception {
        mvc.perform(fault().requestAttr(RequestDispatcher.ERROR_REQUEST_URI, "/station/check")
                        .requestAttr(WebAttributes.ACCESS_DENIED_403, new MissingCsrfTokenException("")))
                .andExpect(status().isForbidden())
                .andExpect(jsonPath("$.detail").value(org.hamcrest.Matchers.containsString("open too long")));
        mvc.perform(fault().requestAttr(WebAttributes.ACCESS_DENIED_403, new AccessDeniedException("role")))
                .andExpect(status().isForbidden())
                .andExpect(jsonPath("$.detail").value("Your role does not allow it."));
    }

    @Test
    void aProgramWithoutThePageTokenIsToldWhichHeaderCarriesIt() throws Exception {
        mvc.perform(get("/error")
                        .requestAttr(RequestDispatcher.ERROR_STATUS_CODE, 403)
                        .requestAttr(RequestDispatcher.ERROR_REQUEST_URI, "/api/v1/orders")
                        .requestAttr(WebAttributes.ACCESS_DENIED_403, new MissingCsrfTokenException("")))
                .andExpect(status().isForbidden())
                .andExpect(jsonPath("$.instead").value(org.hamcrest.Matchers.containsString("header X-XSRF-TOKEN")))
                .andExpect(jsonPath("$.instead")
                        .value(org.hamcrest.Matchers.not(org.hamcrest.Matchers.containsString("sheet"))));
    }

    @Test
    void whoOpensTheSheetOfFaultsIsToldItsAddress() throws Exception {
        mvc.perform(get("/error").accept(MediaType.APPLICATION_JSON))
                .andExpect(status().isNotFound())
                .andExpect(jsonPath("$.detail").value("Nothing here is called /error."));
    }

    private static MockHttpServletRequestBuilder fault() {
        return get("/error")
                .accept(MediaType.APPLICATION_JSON)
                .requestAttr(RequestDispatcher.ERROR_STATUS_CODE, 403)
                .requestAttr(RequestDispatcher.ERROR_REQUEST_URI, "/api/v1/frames");
    }

    @Test
    void theApiIsDescribedWithItsUnitsAndItsRefusals() throws Exception {
        mvc.perform(get("/api/docs/openapi").with(user("auditor")))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.info.title").value("Trammel"))
                .andExpect(jsonPath("$.info.description").value(org.hamcrest.Matchers.containsString("lengths in mm")))
                .andExpect(jsonPath("$.components.schemas.Problem.properties.instead")
                        .exists());
    }

    @Test
    void theFrameworkAddsNoFilterOfItsOwnThatAsksForEveryLinkAmongFiles(
            @Autowired List<FilterRegistrationBean<?>> filters) {
        assertThat(filters.stream()
                        .map(FilterRegistrationBean::getFilter)
                        .filter(ResourceUrlEncodingFilter.class::isInstance))
                .singleElement()
                .isInstanceOf(FileAddresses.class);
    }
}
