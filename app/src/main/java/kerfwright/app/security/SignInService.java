package kerfwright.app.security;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import kerfwright.practice.people.Account;
import kerfwright.practice.people.Accounts;
import kerfwright.practice.people.Session;
import kerfwright.practice.people.Sessions;
import org.jspecify.annotations.Nullable;

/** Lets people in, locks, switches and lets them out. */
public final class SignInService {
  private static final int FREE_TRIES = 3;
  private static final Duration LONGEST_WAIT = Duration.ofMinutes(1);
  private static final Duration FORGOTTEN = Duration.ofMinutes(15);

  private final Accounts accounts;
  private final Sessions sessions;
  private final Clock clock;

  public SignInService(Accounts accounts, Sessions sessions, Clock clock) {
    this.accounts = accounts;
    this.sessions = sessions;
    this.clock = clock;
  }

  /**
   * How a try ended.
   *
   * @param token what the device holds from now on, null where nobody was let in
   * @param account who was let in
   * @param waitS seconds to wait before the next try is looked at, 0 where there is no pause
   */
  public record Answer(@Nullable String token, @Nullable Account account, long waitS) {
    private static final Answer NO = new Answer(null, null, 0);
  }

  public Accounts accounts() {
    return accounts;
  }

  /**
   * Looks at a password. Wrong ones make this person wait at this address, and nobody else
   * anywhere.
   */
  public Answer signIn(String initials, String password, String address) {
    String place = Secrets.hash(initials + " " + address);
    long waitS = count(place);
    if (waitS > 0) {
      return new Answer(null, null, waitS);
    }
    Optional<Account> known =
        accounts.named(initials).filter(Account::active).filter(this::codeHolds);
    // a code is read off a screen: its letters may be typed small
    boolean code = known.map(Account::mustChoose).orElse(false);
    String given = code ? password.strip().toUpperCase(Locale.ROOT) : password;
    if (!PasswordHash.holds(known.map(Account::password).orElse(""), given) || known.isEmpty()) {
      return Answer.NO;
    }
    sessions.change(place, before -> Sessions.Wait.NONE);
    return begin(known.get());
  }

  /** Counts the try before it is looked at; tells the seconds to wait where it is not. */
  private long count(String place) {
    Instant now = now();
    Sessions.Wait before =
        sessions.change(
            place,
            wait -> {
              if (now.isBefore(wait.until())) {
                return wait;
              }
              int failures = now.isAfter(wait.until().plus(FORGOTTEN)) ? 1 : wait.failures() + 1;
              long seconds = failures < FREE_TRIES ? 0 : 1L << Math.min(failures - FREE_TRIES, 10);
              Duration pause = Duration.ofSeconds(Math.min(seconds, LONGEST_WAIT.toSeconds()));
              return new Sessions.Wait(failures, now.plus(pause));
            });
    return now.isBefore(before.until()) ? Duration.between(now, before.until()).toSeconds() + 1 : 0;
  }

  private boolean codeHolds(Account account) {
    return account.codeUntil() == null || now().isBefore(account.codeUntil());
  }

  /** Whether it is the code that was printed; wrong ones make this address wait. */
  public boolean isCode(String printed, String given, String address) {
    String place = Secrets.hash("first " + address);
    boolean right = count(place) == 0 && Secrets.same(printed, given);
    if (right) {
      sessions.change(place, before -> Sessions.Wait.NONE);
    }
    return right;
  }

  /** Whether it is the password of who is signed in; wrong ones make them wait. */
  public boolean holds(Signed signed, String password, String address) {
    Account account = signed.account();
    String place = Secrets.hash(account.initials() + " " + address);
    boolean right = count(place) == 0 && PasswordHash.holds(account.password(), password);
    if (right) {
      sessions.change(place, before -> Sessions.Wait.NONE);
    }
    return right;
  }

  /** Begins a session for somebody whose right is proven. */
  public Answer begin(Account account) {
    Instant now = now();
    sessions.tidy(now.minus(Session.LONGEST).minus(Session.LONGEST));
    String token = Secrets.token();
    sessions.begin(new Session(Secrets.hash(token), account.id(), now, now, now, false, 0));
    return new Answer(token, account, 0);
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
      session = used(session, now);
      sessions.replace(hash, session);
    }
    Session current = session;
    return account.map(one -> new Signed(one, current));
  }

  private static Session used(Session before, Instant now) {
    return new Session(
        before.hash(), before.account(), before.begun(), now, before.confirmed(), false, 0);
  }

  boolean locked(Signed signed) {
    return signed.session().lockedAt(now());
  }

  boolean fresh(Signed signed) {
    return signed.session().freshAt(now());
  }

  public void lock(Signed signed) {
    Session one = signed.session();
    sessions.replace(
        one.hash(),
        new Session(
            one.hash(),
            one.account(),
            one.begun(),
            one.used(),
            Instant.EPOCH,
            true,
            one.wrongPins()));
  }

  /** Opens a locked device for somebody by their digits; the device gets another token. */
  public Answer unlock(Signed device, UUID person, String pin) {
    Session before = device.session();
    int tries = sessions.countPin(before.hash());
    if (tries > Session.MOST_WRONG_PINS) {
      sessions.end(before.hash());
      return Answer.NO;
    }
    Optional<Account> known =
        accounts.find(person).filter(Account::active).filter(one -> !one.pin().isEmpty());
    if (!PasswordHash.holds(known.map(Account::pin).orElse(""), pin) || known.isEmpty()) {
      if (tries == Session.MOST_WRONG_PINS) {
        sessions.end(before.hash());
      }
      return Answer.NO;
    }
    String token = Secrets.token();
    Session next =
        new Session(Secrets.hash(token), person, before.begun(), now(), Instant.EPOCH, false, 0);
    return sessions.replace(before.hash(), next) ? new Answer(token, known.get(), 0) : Answer.NO;
  }

  /** Asks somebody signed in for the password again. */
  public Answer confirm(Signed signed, String password, String address) {
    Answer answer = signIn(signed.account().initials(), password, address);
    if (answer.token() != null) {
      sessions.end(signed.session().hash());
    }
    return answer;
  }

  /** A password and digits of one's own; all other devices are signed out. */
  public boolean choose(Signed signed, String password, String pin) {
    Account next =
        signed.account().with(PasswordHash.of(password), pin.isEmpty() ? "" : PasswordHash.of(pin));
    boolean done = accounts.change(next);
    if (done) {
      sessions.endAll(next.id(), signed.session().hash());
    }
    return done;
  }

  public void signOut(Signed signed) {
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
