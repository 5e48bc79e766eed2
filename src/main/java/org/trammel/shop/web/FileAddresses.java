package org.trammel.shop.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletRequest;
import jakarta.servlet.ServletResponse;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpServletResponseWrapper;
import java.io.IOException;
import java.util.List;
import org.springframework.web.servlet.resource.ResourceUrlEncodingFilter;

/**
 * Puts the hash of its content into the address of a file, and leaves the addresses of pages alone. The filter by itself
 * asks for every link of a page whether there is such a file in any library, which took half of the time of a page.
 */
final class FileAddresses extends ResourceUrlEncodingFilter {

    private static final List<String> FOLDERS = List.of("/css/", "/js/", "/fonts/");

    @Override
    public void doFilter(ServletRequest request, ServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        super.doFilter(
                request,
                response,
                (inner, answer) -> chain.doFilter(
                        inner, new PagesLeftAlone((HttpServletRequest) inner, (HttpServletResponse) answer)));
    }

    private static final class PagesLeftAlone extends HttpServletResponseWrapper {

        private final String root;

        PagesLeftAlone(HttpServletRequest request, HttpServletResponse response) {
            super(response);
            this.root = request.getContextPath();
        }

        @Override
        public String encodeURL(String url) {
            boolean file = FOLDERS.stream().anyMatch(folder -> url.startsWith(root + folder));
            return file ? super.encodeURL(url) : url;
        }
    }
}
