package org.trammel.shop.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpServletResponseWrapper;
import java.io.IOException;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * A form that our script sends keeps its page while the Wi-Fi is away. The script cannot see where a redirect leads, so
 * it is told in a header of an empty answer, and opens that page itself.
 */
@Component
@Order(-200)
class SentByScriptFilter extends OncePerRequestFilter {

    static final String SENT_BY = "Sheet-Sent-By";
    static final String GO_ON_AT = "Sheet-Go-On-At";

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return request.getHeader(SENT_BY) == null;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        chain.doFilter(request, new Told(response));
    }

    private static final class Told extends HttpServletResponseWrapper {

        Told(HttpServletResponse response) {
            super(response);
        }

        @Override
        public void setStatus(int status) {
            super.setStatus(status >= 300 && status < 400 ? SC_NO_CONTENT : status);
        }

        @Override
        public void setHeader(String name, String value) {
            super.setHeader(HttpHeaders.LOCATION.equalsIgnoreCase(name) ? GO_ON_AT : name, value);
        }

        @Override
        public void addHeader(String name, String value) {
            super.addHeader(HttpHeaders.LOCATION.equalsIgnoreCase(name) ? GO_ON_AT : name, value);
        }

        @Override
        public void sendRedirect(String location) {
            setStatus(SC_NO_CONTENT);
            super.setHeader(GO_ON_AT, location);
        }

        @Override
        public void sendRedirect(String location, boolean clearBuffer) {
            sendRedirect(location);
        }

        @Override
        public void sendRedirect(String location, int status) {
            sendRedirect(location);
        }

        @Override
        public void sendRedirect(String location, int status, boolean clearBuffer) {
            sendRedirect(location);
        }
    }
}
