package org.trammel.shop.web;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import org.apache.catalina.Host;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/**
 * What the server itself refuses before any page or filter of ours is asked, an address that cannot be read, is answered
 * in three parts too, as a page or, to a program, as a problem document. Nothing of the request is repeated in it.
 */
@Component
@Order(Ordered.LOWEST_PRECEDENCE)
class UnreadableAddress implements WebServerFactoryCustomizer<TomcatServletWebServerFactory> {

    private static final Logger LOG = LoggerFactory.getLogger(UnreadableAddress.class);

    @Override
    public void customize(TomcatServletWebServerFactory factory) {
        factory.addContextCustomizers(context -> {
            Host host = (Host) context.getParent();
            if (host instanceof org.apache.catalina.core.StandardHost standard) {
                // Else the server adds its own report behind ours, and that one would speak first.
                standard.setErrorReportValveClass("");
            }
            host.getPipeline().addValve(new Report());
        });
    }

    /** The last report of all: {@link Faults} speaks wherever a page of ours was reached. */
    private static final class Report extends ErrorReportValve {

        private static final String WHAT = "There is no such sheet.";
        private static final String WHY =
                "The address is too long, or holds characters that no address of this service has.";
        private static final String INSTEAD = "Open the sheet from its list, or type the address anew.";
        private static final String FAILED = "The sheet cannot be shown.";
        private static final String FAILED_WHY = "The service failed before it read the request.";

        @Override
        protected void report(Request request, Response response, Throwable failure) {
            int status = response.getStatus();
            if (status < 400 || response.getContentWritten() > 0 || !response.setErrorReported()) {
                return;
            }
            boolean ours = status >= 500;
            if (ours) {
                LOG.error("Failed before a page was reached", failure);
            }
            String path = request.getRequestURI();
            boolean program = path != null && Problems.wanted(request, path);
            try {
                response.setCharacterEncoding(StandardCharsets.UTF_8);
                response.setContentType(program ? "application/problem+json" : "text/html");
                Writer writer = response.getReporter();
                if (writer != null) {
                    writer.write(
                            program
                                    ? problem(status, ours ? FAILED : WHAT, ours ? FAILED_WHY : WHY)
                                    : page(ours ? FAILED : WHAT, ours ? FAILED_WHY : WHY));
                    response.finishResponse();
                }
            } catch (IOException | IllegalStateException gone) {
                LOG.debug("Nobody waits for the answer", gone);
            }
        }

        private static String problem(int status, String what, String why) {
            return "{\"type\":\"urn:trammel:refusal:input\",\"title\":\"" + what + "\",\"status\":" + status
                    + ",\"detail\":\"" + why + "\",\"instead\":\"" + INSTEAD + "\"}";
        }

        private static String page(String what, String why) {
            return """
                    <!DOCTYPE html>
                    <html lang="en-GB"><head><meta charset="utf-8">
                    <meta name="viewport" content="width=device-width, initial-scale=1">
                    <title>%1$s</title><link rel="stylesheet" href="/css/tokens.css"><link rel="stylesheet" href="/css/desk.css"></head>
                    <body class="desk"><main class="refused-page"><h1>%1$s</h1><p>%2$s</p><p>%3$s <a href="/">To the first sheet</a></p></main></body></html>
                    """.formatted(what, why, INSTEAD);
        }
    }
}
