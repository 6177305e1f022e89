package kerfwright.app.security;

import io.javalin.security.RouteRole;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import kerfwright.practice.people.ProgramToken;
import kerfwright.practice.people.Role;
import org.jspecify.annotations.Nullable;

/**
 * What a route is for, and so who may call it. Each route names one; a route that names none is
 * denied to everybody.
 */
public enum Access implements RouteRole {
  /** Whoever reaches this server: the sign-in itself and the looks of pages. */
  OPEN(EnumSet.allOf(Role.class)),
  /** Whoever is signed in, for themselves. */
  SELF(EnumSet.allOf(Role.class)),
  /** Likewise, after the password was given just now. */
  SELF_AGAIN(EnumSet.allOf(Role.class)),
  /** Sees stock, reference and plans of cases typed in; no case of the practice. */
  SEE(EnumSet.allOf(Role.class)),
  /** Sees cases of the practice: day, kept cases, runs, record. */
  CASES(EnumSet.of(Role.OWNER, Role.CLINICIAN, Role.ASSISTANT, Role.READ_ONLY)),
  /** Works: keeps cases, logs uses, moves instruments, runs loads, books the day. */
  WORK(EnumSet.of(Role.OWNER, Role.CLINICIAN, Role.ASSISTANT)),
  /** Corrects the record. */
  CORRECT(EnumSet.of(Role.OWNER, Role.CLINICIAN)),
  /** Sets how the practice works. */
  SET(EnumSet.of(Role.OWNER, Role.CLINICIAN)),
  /** People, tokens, trail, backups, export: the owner, who gave the password just now. */
  OWN(EnumSet.of(Role.OWNER)),
  /** Answers questions under an alias; nothing of the practice is changed. */
  LEARN(EnumSet.allOf(Role.class)),
  /** Phones of a class, by a listener of its own; no route of the practice names it. */
  CLASS(EnumSet.noneOf(Role.class)),
  /** Plans for people and for programs with a token of this scope. */
  PLAN_API(EnumSet.allOf(Role.class), ProgramToken.Scope.PLAN),
  /** The list of what to order, likewise. */
  ORDER_API(
      EnumSet.of(Role.OWNER, Role.CLINICIAN, Role.ASSISTANT, Role.READ_ONLY),
      ProgramToken.Scope.ORDER);

  private final Set<Role> roles;
  private final ProgramToken.@Nullable Scope scope;

  Access(Set<Role> roles) {
    this(roles, null);
  }

  Access(Set<Role> roles, ProgramToken.@Nullable Scope scope) {
    this.roles = roles;
    this.scope = scope;
  }

  public boolean allows(Role role) {
    return roles.contains(role);
  }

  /** What a token of a program must be for; empty where none opens it. */
  public Optional<ProgramToken.Scope> scope() {
    return Optional.ofNullable(scope);
  }

  /** True where one who came back by a tap must give their digits first. */
  boolean asksForThePin() {
    return this == CORRECT || this == SET;
  }

  /** True where the second role may do nothing by a tap that the first may not. */
  static boolean tapMayLead(Role from, Role to) {
    return Arrays.stream(values())
        .filter(one -> !one.asksForThePin() && !one.asksForThePassword())
        .allMatch(one -> one.allows(from) || !one.allows(to));
  }

  /** True where the password must have been given just now. */
  boolean asksForThePassword() {
    return this == OWN || this == SELF_AGAIN;
  }
}
