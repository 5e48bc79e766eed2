package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.core.io.Resource;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.web.servlet.resource.ResourceHttpRequestHandler;
import org.springframework.web.servlet.resource.ResourceResolver;
import org.springframework.web.servlet.resource.ResourceResolverChain;
import org.springframework.web.servlet.resource.ResourceUrlProvider;
import org.springframework.web.servlet.resource.ResourceUrlProviderExposingInterceptor;

class FileAddressesTest {

    private final List<String> lookedFor = new ArrayList<>();
    private final ResourceUrlProvider files = new ResourceUrlProvider();

    @BeforeEach
    void everyPathMayBeAFile() {
        ResourceHttpRequestHandler handler = new ResourceHttpRequestHandler();
        handler.setResourceResolvers(List.of(new Looked()));
        files.setHandlerMap(Map.of("/**", handler));
    }

    @Test
    void onlyTheAddressesOfFilesAreLookedForAmongFiles() throws Exception {
        assertThat(written("/css/tokens.css")).isEqualTo("/css/tokens-1f3a.css");
        assertThat(written("/station/AV26101H")).isEqualTo("/station/AV26101H");
        assertThat(written("#top")).isEqualTo("#top");
        assertThat(lookedFor).containsExactly("css/tokens.css");
    }

    private String written(String url) throws Exception {
        List<String> said = new ArrayList<>();
        new FileAddresses()
                .doFilter(
                        new MockHttpServletRequest("GET", "/station"),
                        new MockHttpServletResponse(),
                        (request, response) -> {
                            request.setAttribute(
                                    ResourceUrlProviderExposingInterceptor.RESOURCE_URL_PROVIDER_ATTR, files);
                            said.add(((HttpServletResponse) response).encodeURL(url));
                        });
        return said.get(0);
    }

    private final class Looked implements ResourceResolver {

        @Override
        public @Nullable Resource resolveResource(
                @Nullable HttpServletRequest request,
                String path,
                List<? extends Resource> locations,
                ResourceResolverChain chain) {
            return null;
        }

        @Override
        public String resolveUrlPath(String path, List<? extends Resource> locations, ResourceResolverChain chain) {
            lookedFor.add(path);
            return path.replace(".css", "-1f3a.css");
        }
    }
}
