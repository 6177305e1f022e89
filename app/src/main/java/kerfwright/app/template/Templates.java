package kerfwright.app.template;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** Fills the templates of pages and print with values. */
public final class Templates {
  private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);

  public String render(String name, Map<String, Object> values) {
    StringOutput out = new StringOutput();
    engine.render(name, values, out);
    return out.toString();
  }
}
