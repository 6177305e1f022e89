package kerfwright.app.template;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import kerfwright.app.security.Signed;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.tooth.ToothSystem;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.Settings;
import kerfwright.quantity.Identified;

/** Fills the templates of pages and print with values, in the practice's language. */
public final class Templates {
  private static final TemplateEngine ENGINE = TemplateEngine.createPrecompiled(ContentType.Html);

  private static final String PLACE_OF_WARNING = "<div data-warning></div>";
  private static final String PLACE_OF_WHO = "<div data-who></div>";

  private final Settings settings;
  private final Function<Say, String> warning;

  public Templates(Settings settings) {
    this(settings, say -> "");
  }

  /**
   * @param warning what stands at the top of every page, empty where nothing is to be warned of
   */
  public Templates(Settings settings, Function<Say, String> warning) {
    this.settings = settings;
    this.warning = warning;
  }

  /** Answers a call with a page; the template gets {@code say} besides. */
  public void html(Context call, String name, Map<String, Object> values) {
    call.html(page(call, name, values));
  }

  /** The text of a page, see {@link #html}. */
  public String page(Context call, String name, Map<String, Object> values) {
    Say say = say(call);
    return render(say, name, values)
        .replace(PLACE_OF_WARNING, warning.apply(say))
        .replace(PLACE_OF_WHO, who(call, say));
  }

  /** Who is signed in, with the button that locks; empty where nobody signs in. */
  private static String who(Context call, Say say) {
    String query = call.queryString();
    boolean asks = call.method() == HandlerType.GET;
    String here = asks ? call.path() + (query == null ? "" : "?" + query) : "/";
    return Signed.initials(call)
        .map(one -> render(say, "signin/who.jte", Map.of("initials", one, "here", here)))
        .orElse("");
  }

  /** How this call is answered: the practice's language, else what the browser prefers. */
  public Say say(Context call) {
    SettingValues set = settings.read();
    String accepted = call.header("Accept-Language");
    Language language =
        set.find("language")
            .flatMap(Language::byId)
            .orElseGet(() -> Language.preferred(accepted == null ? "" : accepted));
    Say usual = Say.in(language);
    boolean comma = set.find("decimal").map("comma"::equals).orElse(usual.decimalComma());
    ToothSystem teeth =
        set.find("teeth").flatMap(id -> Identified.of(ToothSystem.class, id)).orElse(usual.teeth());
    return new Say(language, comma, teeth);
  }

  /** Fills a template that is no page: print, labels. */
  public static String render(Say say, String name, Map<String, Object> values) {
    Map<String, Object> all = new HashMap<>(values);
    all.put("say", say);
    StringOutput out = new StringOutput();
    ENGINE.render(name, all, out);
    return out.toString();
  }
}
