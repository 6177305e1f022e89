package kerfwright.app.casefile;

import java.nio.file.Path;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.SourceText;
import kerfwright.app.input.TreeReader;
import kerfwright.planner.casework.CutCase;

/** Reads a case from a YAML file, or from the same object written as JSON. */
public final class CaseFile {
  private final CaseReader reader;

  public CaseFile(CaseCatalogue catalogue) {
    this.reader = new CaseReader(catalogue);
  }

  public CutCase read(Path file) throws BadInput {
    SourceText source = SourceText.of(file);
    return yaml(source);
  }

  public CutCase yaml(SourceText source) throws BadInput {
    return reader.read(TreeReader.yaml(source), source.origin());
  }

  public CutCase json(SourceText source) throws BadInput {
    return reader.read(TreeReader.json(source), source.origin());
  }
}
