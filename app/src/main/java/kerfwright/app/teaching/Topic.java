package kerfwright.app.teaching;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerfwright.app.words.Say;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.physics.cutting.CrackThreshold;
import kerfwright.quantity.Identified;
import kerfwright.quantity.SourceKey;

/** What a lecture shows. */
public enum Topic implements Identified {
  PRESSED("lawn-marshall-1979", "evans-marshall-1981", "bifano-1991"),
  PLOUGHED("lawn-marshall-1979", "malkin-guo-2008"),
  CHIP("song-2013", "song-msec-2012"),
  FLUTES("standards-s31", "adhesive-heat-2006"),
  GRITS("standards-s25", "yin-2003"),
  THRESHOLD("lawn-marshall-1979", "yin-2003");

  /** No hand presses one grain harder than this, N. */
  private static final double CRACKS_BELOW_N = 10;

  private final List<SourceKey> sources;

  Topic(String... sources) {
    this.sources = Stream.of(sources).map(SourceKey::new).toList();
  }

  public List<SourceKey> sources() {
    return sources;
  }

  public String title(Say say) {
    return say.at("teaching.topic-" + id());
  }

  /** The layers it can be shown in: only what a grain may crack shows a chip popping out. */
  public List<Material> layers() {
    return Materials.packaged().all().stream()
        .filter(one -> this != PRESSED || CrackThreshold.loadN(one.typical()) < CRACKS_BELOW_N)
        .toList();
  }

  /** One of them; empty where it cannot be shown in that. */
  Optional<Material> layer(String material) {
    return layers().stream().filter(one -> one.id().equals(material)).findFirst();
  }

  /** The step that shows best what it is about, drawn as usual. */
  public String picture(Say say) {
    int step =
        switch (this) {
          case PRESSED -> 4;
          case PLOUGHED -> 3;
          case CHIP, FLUTES, GRITS -> 2;
          case THRESHOLD -> 1;
        };
    Scene usual = Scene.of(this, name -> "");
    String svg = Lectures.of(say, this, usual).frames().get(step - 1).svg();
    String id = id() + "-" + step;
    return svg.replace("\"" + id, "\"card-" + id).replace(" " + id, " card-" + id);
  }

  /** The layer it begins with. */
  Material usual() {
    return Materials.packaged().get(this == PLOUGHED || this == FLUTES ? "dentine" : "enamel");
  }
}
