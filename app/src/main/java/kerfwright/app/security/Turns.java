package kerfwright.app.security;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import kerfwright.app.storage.people.Accounts;
import kerfwright.app.storage.people.Sessions;
import kerfwright.practice.people.Account;
import kerfwright.practice.people.Session;

/**
 * People take turns at a device: by a tap, by digits, and whoever is asked for codes by password
 * and code, once for as long as a session lasts.
 */
public final class Turns {
  /** What is known of people and devices. */
  record Parts(
      Accounts accounts,
      Sessions sessions,
      OneTimeCodes codes,
      Pauses pauses,
      Passwords passwords) {}

  private final Parts with;
  private final Supplier<Duration> tapHolds;
  private final Clock clock;

  Turns(Parts with, Supplier<Duration> tapHolds, Clock clock) {
    this.with = with;
    this.tapHolds = tapHolds;
    this.clock = clock;
  }

  /** Locks the device: from now on nobody comes back to it by a tap. */
  public void lock(Signed signed) {
    Session one = signed.session();
    with.sessions().leave(one.device(), one.account(), Instant.EPOCH);
    with.sessions().noTaps(one.device());
    with.sessions().replace(one.hash(), one.asLocked());
  }

  /**
   * Somebody of the list to choose from.
   *
   * @param account who
   * @param here whether they were at this device
   * @param tap where no digits are asked for
   * @param whole where digits are not enough: they are asked for codes, and gave none at this
   *     device within the time that a session lasts
   */
  public record Seat(Account account, boolean here, boolean tap, boolean whole) {}

  /** Who can go on at a device: those who were there first, then the others. */
  public List<Seat> seats(Signed device) {
    Map<UUID, Sessions.Seat> known = with.sessions().seats(device.session().device());
    Set<UUID> asked = with.codes().on();
    return with.accounts().all().stream()
        .filter(one -> one.active() && !one.pin().isEmpty())
        .map(
            one -> {
              boolean now = one.id().equals(device.account().id());
              Sessions.Seat seat = known.getOrDefault(one.id(), Sessions.Seat.NEVER);
              boolean whole = asked.contains(one.id()) && unproven(seat);
              return new Seat(
                  one,
                  now || known.containsKey(one.id()),
                  !whole && mayTap(device, one, seat.tapUntil()),
                  whole);
            })
        .sorted(Comparator.comparing(one -> !one.here()))
        .toList();
  }

  /** Whether digits are not enough for somebody at a device. */
  public boolean askedForAll(Signed device, UUID person) {
    Map<UUID, Sessions.Seat> known = with.sessions().seats(device.session().device());
    return with.codes().on(person) && unproven(known.getOrDefault(person, Sessions.Seat.NEVER));
  }

  private boolean unproven(Sessions.Seat seat) {
    return !now().isBefore(seat.proven().plus(Session.LONGEST));
  }

  /**
   * By a tap comes back who was at this device just now, where it was not locked since; and never
   * somebody who may see or do more than the one whose screen it is.
   */
  private boolean mayTap(Signed device, Account person, Instant until) {
    return now().isBefore(until)
        && !lockedNow(device)
        && !person.mustChoose()
        && Access.tapMayLead(device.account().role(), person.role());
  }

  /** Goes on by a tap, where that is enough; the device gets another token. */
  public SignInService.Answer tap(Signed device, UUID person) {
    return seats(device).stream()
        .filter(one -> one.tap() && one.account().id().equals(person))
        .findFirst()
        .map(one -> goOn(device, one.account(), true))
        .orElse(SignInService.Answer.NO);
  }

  private SignInService.Answer goOn(Signed device, Account person, boolean tapped) {
    String token = Secrets.token();
    Session next = device.session().goneOnBy(person.id(), Secrets.hash(token), now(), tapped);
    return goOn(device, person, next, token);
  }

  private SignInService.Answer goOn(Signed device, Account person, Session next, String token) {
    Session before = device.session();
    boolean left = !lockedNow(device) && !before.account().equals(person.id());
    if (!with.sessions().replace(before.hash(), next)) {
      return SignInService.Answer.NO;
    }
    if (left) {
      with.sessions().leave(before.device(), before.account(), now().plus(tapHolds.get()));
    }
    return new SignInService.Answer(token, person, 0, null);
  }

  /**
   * Goes on by password and code at a device that knows somebody's digits are not enough; those who
   * were there before stay known to it.
   */
  public SignInService.Answer arrive(
      Signed device, UUID person, String password, String code, String address) {
    Optional<Account> asked = with.accounts().find(person);
    String place = Passwords.place(asked.map(Account::initials).orElse(""), address);
    long waitS = with.pauses().count(place, now());
    if (waitS > 0) {
      return SignInService.Answer.later(waitS);
    }
    Optional<Account> known =
        asked
            .flatMap(one -> with.passwords().whose(one.initials(), password))
            .filter(one -> with.codes().take(one.id(), code));
    if (known.isEmpty()) {
      return SignInService.Answer.NO;
    }
    with.pauses().none(place);
    String token = Secrets.token();
    String here = device.session().device();
    SignInService.Answer answer =
        goOn(device, known.get(), Session.begun(Secrets.hash(token), person, here, now()), token);
    if (answer.token() != null) {
      with.sessions().prove(here, person, now());
    }
    return answer;
  }

  /**
   * Goes on by digits, at a locked device too; the device gets another token. Wrong digits make
   * that person wait there, and five in a session end it.
   */
  public SignInService.Answer unlock(Signed device, UUID person, String pin) {
    Session before = device.session();
    if (askedForAll(device, person)) {
      return SignInService.Answer.NO;
    }
    int tries = with.sessions().countPin(before.hash());
    String place = Secrets.hash("pin " + person + " " + before.device());
    long waitS = tries > Session.MOST_WRONG_PINS ? 0 : with.pauses().count(place, now());
    Optional<Account> known =
        with.accounts().find(person).filter(Account::active).filter(one -> !one.pin().isEmpty());
    boolean right =
        tries <= Session.MOST_WRONG_PINS
            && waitS == 0
            && PasswordHash.holds(known.map(Account::pin).orElse(""), pin)
            && known.isPresent();
    if (right) {
      with.pauses().none(place);
      return goOn(device, known.get(), false);
    }
    if (tries >= Session.MOST_WRONG_PINS) {
      with.sessions().end(before.hash());
    }
    return SignInService.Answer.later(waitS);
  }

  private boolean lockedNow(Signed device) {
    return device.session().lockedAt(now());
  }

  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MICROS);
  }
}
