package kerfwright.app.security;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import kerfwright.app.storage.people.Accounts;
import kerfwright.app.storage.people.Sessions;
import kerfwright.practice.people.Account;
import kerfwright.practice.people.Session;
import org.jspecify.annotations.Nullable;

/** Lets people in, locks, switches and lets them out. */
public final class SignInService {
  private static final Duration CODE_WITHIN = Duration.ofMinutes(5);

  private final Accounts accounts;
  private final Sessions sessions;
  private final OneTimeCodes codes;
  private final Pauses pauses;
  private final Passwords passwords;
  private final Turns turns;
  private final Clock clock;

  /**
   * @param codes whom a code is asked of
   * @param tapHolds for how long after somebody else went on a tap brings one back; none where zero
   */
  public SignInService(
      Accounts accounts,
      Sessions sessions,
      OneTimeCodes codes,
      Supplier<Duration> tapHolds,
      Clock clock) {
    this.accounts = accounts;
    this.sessions = sessions;
    this.codes = codes;
    this.pauses = new Pauses(sessions);
    this.passwords = new Passwords(accounts, clock);
    this.clock = clock;
    this.turns =
        new Turns(new Turns.Parts(accounts, sessions, codes, pauses, passwords), tapHolds, clock);
  }

  /**
   * How a try ended.
   *
   * @param token what the device holds from now on, null where nobody was let in
   * @param account who was let in
   * @param waitS seconds to wait before the next try is looked at, 0 where there is no pause
   * @param half where the password was right and a code is still to come: what stands for it
   */
  public record Answer(
      @Nullable String token, @Nullable Account account, long waitS, @Nullable String half) {
    static final Answer NO = new Answer(null, null, 0, null);

    static Answer later(long seconds) {
      return new Answer(null, null, seconds, null);
    }
  }

  /** How people take turns at a device. */
  public Turns turns() {
    return turns;
  }

  public Accounts accounts() {
    return accounts;
  }

  /**
   * Looks at a password. Wrong ones make this person wait at this address, and nobody else
   * anywhere.
   */
  public Answer signIn(String initials, String password, String address) {
    String place = Passwords.place(initials, address);
    long waitS = pauses.count(place, now());
    if (waitS > 0) {
      return Answer.later(waitS);
    }
    Optional<Account> known = passwords.whose(initials, password);
    if (known.isEmpty()) {
      return Answer.NO;
    }
    if (codes.on(known.get().id())) {
      String half = Secrets.token();
      sessions.half(Secrets.hash(half), known.get().id(), now().plus(CODE_WITHIN));
      return new Answer(null, null, 0, half);
    }
    pauses.none(place);
    return begin(known.get());
  }

  /** Whose password was right, while their code is still waited for. */
  public Optional<Account> half(String half) {
    return sessions
        .half(Secrets.hash(half), now())
        .flatMap(accounts::find)
        .filter(Account::active)
        .filter(passwords::handedCodeHolds);
  }

  /** The code after the password; a wrong one counts as a wrong password does. */
  public Answer code(String half, String code, String address) {
    Optional<Account> known = half(half);
    if (known.isEmpty()) {
      return Answer.NO;
    }
    String place = Passwords.place(known.get().initials(), address);
    long waitS = pauses.count(place, now());
    if (waitS > 0 || !codes.take(known.get().id(), code)) {
      return new Answer(null, null, waitS, half);
    }
    pauses.none(place);
    sessions.endHalf(Secrets.hash(half));
    return begin(known.get());
  }

  /** Whether it is the code that was printed; wrong ones make this address wait. */
  public boolean isCode(String printed, String given, String address) {
    String place = Secrets.hash("first " + address);
    boolean right = pauses.count(place, now()) == 0 && Secrets.same(printed, given);
    if (right) {
      pauses.none(place);
    }
    return right;
  }

  /** Whether it is the password of who is signed in; wrong ones make them wait. */
  public Answer holds(Signed signed, String password, String address) {
    Account account = signed.account();
    String place = Passwords.place(account.initials(), address);
    long waitS = pauses.count(place, now());
    if (waitS > 0) {
      return Answer.later(waitS);
    }
    if (!PasswordHash.holds(account.password(), password)) {
      return Answer.NO;
    }
    pauses.none(place);
    return new Answer(null, account, 0, null);
  }

  /** Begins a session for somebody whose right is proven, on a device not known before. */
  public Answer begin(Account account) {
    Instant now = now();
    sessions.tidy(now.minus(Session.LONGEST).minus(Session.LONGEST));
    String token = Secrets.token();
    String device = Secrets.hash(Secrets.token());
    sessions.begin(Session.begun(Secrets.hash(token), account.id(), device, now));
    sessions.prove(device, account.id(), now);
    return new Answer(token, account, 0, null);
  }

  /** Who holds this token, on a device that may be locked; its use is noted, to the minute. */
  public Optional<Signed> who(String token) {
    String hash = Secrets.hash(token);
    Instant now = now();
    Optional<Session> found = sessions.find(hash).filter(one -> !one.over(now));
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Session session = found.get();
    Optional<Account> account = accounts.find(session.account()).filter(Account::active);
    if (account.isPresent()
        && !session.lockedAt(now)
        && now.isAfter(session.used().plus(1, ChronoUnit.MINUTES))) {
      session = session.usedAt(now);
      sessions.replace(hash, session);
    }
    Session current = session;
    return account.map(one -> new Signed(one, current));
  }

  boolean locked(Signed signed) {
    return signed.session().lockedAt(now());
  }

  boolean fresh(Signed signed) {
    return signed.session().freshAt(now());
  }

  /** Asks somebody signed in for the password again; the device gets another token. */
  public Answer confirm(Signed signed, String password, String address) {
    Answer answer = holds(signed, password, address);
    if (answer.account() == null) {
      return answer;
    }
    String token = Secrets.token();
    Session before = signed.session();
    boolean done = sessions.replace(before.hash(), before.confirmedAt(Secrets.hash(token), now()));
    return done ? new Answer(token, signed.account(), 0, null) : Answer.NO;
  }

  /**
   * A password of one's own, and digits, empty for none and null for those of before; all other
   * devices are signed out.
   */
  public boolean choose(Signed signed, String password, @Nullable String pin) {
    String digits = pin == null ? signed.account().pin() : pinHash(pin);
    return change(signed, signed.account().with(PasswordHash.of(password), digits));
  }

  /** Digits of one's own, or none; all other devices are signed out. */
  public boolean choosePin(Signed signed, String pin) {
    return change(signed, signed.account().with(signed.account().password(), pinHash(pin)));
  }

  private static String pinHash(String pin) {
    return pin.isEmpty() ? "" : PasswordHash.of(pin);
  }

  private boolean change(Signed signed, Account next) {
    boolean done = accounts.change(next);
    if (done) {
      endOthers(signed);
    }
    return done;
  }

  /** Ends all that somebody has open elsewhere; at this device they stay as they were. */
  private void endOthers(Signed signed) {
    UUID person = signed.account().id();
    String here = signed.session().device();
    Instant proven = sessions.seats(here).getOrDefault(person, Sessions.Seat.NEVER).proven();
    sessions.endAll(person, signed.session().hash());
    sessions.prove(here, person, proven);
  }

  public boolean asksForCodes(Account account) {
    return codes.on(account.id());
  }

  /**
   * From now on a code is asked of whoever is signed in here, which they show by a first one; all
   * other devices are signed out. Comes back with the recovery codes, or without where it is wrong.
   */
  public List<String> askForCodes(Signed signed, String code) {
    List<String> standIns = codes.switchOn(signed.account().id(), code);
    if (!standIns.isEmpty()) {
      endOthers(signed);
      sessions.prove(signed.session().device(), signed.account().id(), now());
    }
    return standIns;
  }

  /** Asks for no code any more, after one more of them; all other devices are signed out. */
  public Answer askForNoCodes(Signed signed, String code, String address) {
    Account account = signed.account();
    String place = Passwords.place(account.initials(), address);
    long waitS = pauses.count(place, now());
    if (waitS > 0) {
      return Answer.later(waitS);
    }
    if (!codes.take(account.id(), code)) {
      return Answer.NO;
    }
    pauses.none(place);
    codes.end(account.id());
    endOthers(signed);
    return new Answer(null, account, 0, null);
  }

  public void signOut(Signed signed) {
    sessions.noTaps(signed.session().device());
    sessions.end(signed.session().hash());
  }

  /** Ends all that somebody has open: they left, or may do something else from now on. */
  public void endAll(Account account) {
    sessions.endAll(account.id(), "");
  }

  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MICROS);
  }
}
