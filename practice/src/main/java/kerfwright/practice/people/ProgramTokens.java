package kerfwright.practice.people;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Keeps the tokens of programs. */
public interface ProgramTokens {
  /** All, the newest first. */
  List<ProgramToken> all();

  Optional<ProgramToken> find(String hash);

  void add(ProgramToken token);

  void end(UUID id);
}
