package kerfwright.app.security;

import jakarta.servlet.Filter;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.ServletRequest;
import jakarta.servlet.ServletResponse;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import kerfwright.app.input.PlainText;
import org.jspecify.annotations.Nullable;

/** Takes control characters out of queries, forms and JSON before anything reads them. */
final class PlainRequests implements Filter {
  @Override
  public void doFilter(ServletRequest request, ServletResponse response, FilterChain chain)
      throws IOException, ServletException {
    chain.doFilter(
        request instanceof HttpServletRequest http ? new Plain(http) : request, response);
  }

  private static final class Plain extends HttpServletRequestWrapper {
    private @Nullable ServletInputStream body;

    Plain(HttpServletRequest request) {
      super(request);
    }

    @Override
    public @Nullable String getQueryString() {
      String query = super.getQueryString();
      return query == null ? null : PlainText.ofForm(query);
    }

    @Override
    public ServletInputStream getInputStream() throws IOException {
      String type = getContentType() == null ? "" : getContentType().toLowerCase(Locale.ROOT);
      boolean form = type.startsWith("application/x-www-form-urlencoded");
      if (!form && !type.startsWith("application/json")) {
        return super.getInputStream();
      }
      if (body == null) {
        body = new Held(plain(super.getInputStream(), form));
      }
      return body;
    }

    /** A body too long to be taken is handed on as it is. */
    private static InputStream plain(InputStream sent, boolean form) throws IOException {
      byte[] bytes = sent.readNBytes((int) Gate.LARGEST_BODY + 1);
      if (bytes.length > Gate.LARGEST_BODY) {
        return new SequenceInputStream(new ByteArrayInputStream(bytes), sent);
      }
      String text = new String(bytes, StandardCharsets.UTF_8);
      String plain = form ? PlainText.ofForm(text) : PlainText.ofJson(text);
      return new ByteArrayInputStream(
          plain.equals(text) ? bytes : plain.getBytes(StandardCharsets.UTF_8));
    }
  }

  private static final class Held extends ServletInputStream {
    private final InputStream from;
    private boolean over;

    Held(InputStream from) {
      this.from = from;
    }

    @Override
    public int read() throws IOException {
      int next = from.read();
      over = next < 0;
      return next;
    }

    @Override
    public int read(byte[] into, int at, int most) throws IOException {
      int count = from.read(into, at, most);
      over = count < 0;
      return count;
    }

    @Override
    public boolean isFinished() {
      return over;
    }

    @Override
    public boolean isReady() {
      return true;
    }

    @Override
    public void setReadListener(ReadListener listener) {
      throw new UnsupportedOperationException("Bodies are read at once");
    }
  }
}
