package kerfwright.app.storage;

import static java.util.Map.entry;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategy;
import com.fasterxml.jackson.databind.cfg.MapperConfig;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.AnnotatedField;
import com.fasterxml.jackson.databind.introspect.AnnotatedMember;
import com.fasterxml.jackson.databind.introspect.AnnotatedMethod;
import com.fasterxml.jackson.databind.introspect.AnnotatedParameter;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Map;
import java.util.function.Function;
import kerfwright.app.stocklist.ListTable;
import kerfwright.app.storage.cases.KeptCases;
import kerfwright.app.storage.teaching.Lessons;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DayBook;
import kerfwright.practice.daylist.KeptRemedy;
import kerfwright.practice.daylist.PieceNeed;
import kerfwright.practice.daylist.PlannedDay;
import kerfwright.practice.daylist.TrayTemplate;
import kerfwright.practice.kept.KeptCase;
import kerfwright.practice.learning.OwnCut;
import kerfwright.practice.reprocessing.Cycle;
import kerfwright.practice.reprocessing.Indicator;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.LoadEvent;
import kerfwright.practice.reprocessing.Pouch;
import kerfwright.practice.teaching.Level;
import kerfwright.practice.teaching.OwnQuestion;
import kerfwright.practice.teaching.Topic;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.Goal;
import kerfwright.schedule.GoalResult;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.Need;
import kerfwright.schedule.Shortage;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.Stock;
import kerfwright.schedule.Substitute;
import kerfwright.schedule.TrayPlace;
import kerfwright.schedule.remedy.Remedy;

/**
 * What documents call the components of a record and the constants of an enum, in the order these
 * stand in the program: either is renamed there freely, and keeps its name here. A word is never
 * changed or given another meaning within a layout; one added to the end of a record may be missing
 * in older documents.
 */
final class StoredNames {
  private static final Map<Class<?>, String> NAMES =
      Map.ofEntries(
          entry(DayBook.class, "date version bookings planned"),
          entry(Booking.class, "id chair start end caseReference tooth work caseText needs pieces"),
          entry(Need.class, "type lifeAsked substitutes"),
          entry(Substitute.class, "type costRatio"),
          entry(PieceNeed.class, "anyOf ifNeeded"),
          entry(PlannedDay.class, "problem pieces plan remedies"),
          entry(
              Day.class,
              "start lengthMin cleaningMin loadMin loadGridMin sterilisers loadCapacity stock"
                  + " appointments facts extraStartsMin"),
          entry(Stock.class, "type life uses dirty"),
          entry(Appointment.class, "id startMin endMin needs chair details"),
          entry(FixedFacts.class, "nowMin loads trays"),
          entry(SteriliserLoad.class, "startMin instruments"),
          entry(InstrumentRef.class, "type index"),
          entry(TrayPlace.class, "appointment instrument"),
          entry(DayPlan.class, "trays loads shortages goals solver"),
          entry(Shortage.class, "appointment type"),
          entry(GoalResult.class, "goal value bound proven seconds"),
          entry(Goal.class, "SHORTAGES LOADS WEAR"),
          entry(KeptRemedy.class, "remedy costMin shortagesAfter loadsAfter proven"),
          entry(Remedy.UseSubstitute.class, "appointment type instead costRatio"),
          entry(Remedy.SwapAppointments.class, "first second"),
          entry(Remedy.LoadBetween.class, "startMin"),
          entry(Remedy.LoadBeforeOpening.class, "inside"),
          entry(Remedy.LoadBeside.class, ""),
          entry(Remedy.BuyMore.class, "type pieces"),
          entry(TrayTemplate.class, "name minutes needs"),
          entry(
              Load.class, "id version name steriliser cycle started minutes state pouches events"),
          entry(Cycle.class, "b-134 b-121 s-134 n-134"),
          entry(Load.State.class, "RUNNING RELEASED FAILED"),
          entry(Pouch.class, "id code set contents last_day"),
          entry(Pouch.Content.class, "item label"),
          entry(LoadEvent.class, "at by what indicator result note"),
          entry(LoadEvent.What.class, "STARTED READ RELEASED FAILED RETURNED"),
          entry(Indicator.class, "parameters chemical packs spores"),
          entry(Indicator.Result.class, "not-read passed failed"),
          entry(ListTable.class, "header rows lines"),
          entry(KeptCases.Document.class, "form steps"),
          entry(KeptCase.Step.class, "operation instrument setRpm loadN cutS"),
          entry(OwnQuestion.class, "id version text answers why source"),
          entry(Lessons.SetDocument.class, "seed level topics count own"),
          entry(Level.class, "easy medium hard"),
          entry(Topic.class, "INSTRUMENTS NUMBERS LAYERS CHOICE HANDLING HEAT REPROCESSING OWN"),
          entry(
              OwnCut.class,
              "item uses sterilisations handpieceId materialId loadN waterMlPerMin engagedMm"
                  + " seconds depthsMm stallN"));

  private StoredNames() {}

  static ObjectMapper mapper() {
    SimpleModule times = new SimpleModule("times");
    asText(times, LocalTime.class, LocalTime::parse);
    asText(times, LocalDate.class, LocalDate::parse);
    asText(times, Instant.class, Instant::parse);
    ObjectMapper mapper = new ObjectMapper();
    return mapper
        .registerModule(times)
        .addMixIn(Remedy.class, RemedyKinds.class)
        .setPropertyNamingStrategy(new OfComponents())
        .setAnnotationIntrospector(new OfConstants());
  }

  private static <T> void asText(SimpleModule module, Class<T> type, Function<String, T> parse) {
    module.addSerializer(type, ToStringSerializer.instance);
    module.addDeserializer(
        type,
        new JsonDeserializer<T>() {
          @Override
          public T deserialize(JsonParser parser, DeserializationContext any) throws IOException {
            return parse.apply(parser.getText());
          }
        });
  }

  private static String[] names(Class<?> type, int count) {
    String names = NAMES.get(type);
    String[] all = names == null || names.isEmpty() ? new String[0] : names.split(" ");
    if (all.length != count) {
      throw new IllegalStateException(type + " has " + count + " parts, and names: " + names);
    }
    return all;
  }

  @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
  @JsonSubTypes({
    @JsonSubTypes.Type(value = Remedy.UseSubstitute.class, name = "substitute"),
    @JsonSubTypes.Type(value = Remedy.SwapAppointments.class, name = "swap"),
    @JsonSubTypes.Type(value = Remedy.LoadBetween.class, name = "load-between"),
    @JsonSubTypes.Type(value = Remedy.LoadBeforeOpening.class, name = "load-before-opening"),
    @JsonSubTypes.Type(value = Remedy.LoadBeside.class, name = "load-beside"),
    @JsonSubTypes.Type(value = Remedy.BuyMore.class, name = "buy")
  })
  private interface RemedyKinds {}

  private static final class OfComponents extends PropertyNamingStrategy {
    private static final long serialVersionUID = 1;

    @Override
    public String nameForField(MapperConfig<?> any, AnnotatedField of, String component) {
      return name(of, component);
    }

    @Override
    public String nameForGetterMethod(MapperConfig<?> any, AnnotatedMethod of, String component) {
      return name(of, component);
    }

    @Override
    public String nameForConstructorParameter(
        MapperConfig<?> any, AnnotatedParameter of, String component) {
      return name(of, component);
    }

    private static String name(AnnotatedMember of, String component) {
      RecordComponent[] all = of.getDeclaringClass().getRecordComponents();
      if (all == null) {
        return component; // asked of lists and texts too, which have none
      }
      String[] names = names(of.getDeclaringClass(), all.length);
      for (int i = 0; i < all.length; i++) {
        if (all[i].getName().equals(component)) {
          return names[i];
        }
      }
      throw new IllegalStateException(of + " is no component");
    }
  }

  private static final class OfConstants extends JacksonAnnotationIntrospector {
    private static final long serialVersionUID = 1;

    @Override
    public String[] findEnumValues(
        MapperConfig<?> any, AnnotatedClass of, Enum<?>[] constants, String[] names) {
      return names(of.getRawType(), constants.length);
    }
  }
}
