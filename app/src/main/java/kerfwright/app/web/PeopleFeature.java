package kerfwright.app.web;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import kerfwright.app.feature.Feature;
import kerfwright.app.network.PairingPages;
import kerfwright.app.security.Footprint;
import kerfwright.app.security.Gate;
import kerfwright.app.security.Guard;
import kerfwright.app.security.OneTimeCodes;
import kerfwright.app.security.SignInService;
import kerfwright.app.signin.AccountPages;
import kerfwright.app.signin.CodePages;
import kerfwright.app.signin.PeoplePages;
import kerfwright.app.signin.SignInPages;
import kerfwright.app.signin.Switching;
import kerfwright.app.signin.TrailPages;
import kerfwright.app.signin.TurnPages;
import kerfwright.app.storage.people.StoredAccounts;
import kerfwright.app.storage.people.StoredAuthenticators;
import kerfwright.app.storage.people.StoredSessions;
import kerfwright.app.storage.people.StoredTokens;
import kerfwright.app.storage.people.StoredTrail;
import kerfwright.app.template.Templates;

/** Who may come in: the gate, and the pages around it. */
final class PeopleFeature implements Feature {
  private final Gate gate;
  private final List<Feature> parts;

  PeopleFeature(OpenPractice open, Entrance entrance, Templates templates, Clock clock) {
    StoredTokens tokens = new StoredTokens(open.database());
    OneTimeCodes codes = new OneTimeCodes(new StoredAuthenticators(open.database()), clock);
    SignInService service =
        new SignInService(
            new StoredAccounts(open.database()),
            new StoredSessions(open.database()),
            codes,
            () -> Duration.ofMinutes(Switching.MINUTES.of(open.settings().read())),
            clock);
    StoredTrail trail = new StoredTrail(open.database());
    Footprint footprint = new Footprint(trail, clock);
    Guard guard = new Guard(entrance.doors(), service, tokens, footprint, clock);
    this.gate = new Gate(entrance.doors(), guard);
    this.parts =
        List.of(
            new SignInPages(guard, service, footprint, templates),
            new TurnPages(guard, service, footprint, templates),
            new AccountPages(
                guard,
                service,
                open.settings(),
                entrance.firstCode(),
                open.service()::newId,
                templates),
            new CodePages(guard, service, codes, templates),
            new PeoplePages(
                new PeoplePages.Parts(
                    service,
                    codes,
                    tokens,
                    open.settings(),
                    open.service()::newId,
                    clock,
                    entrance.network() != null && entrance.network().fingerprint().isPresent(),
                    entrance.firstCode() != null),
                templates),
            new TrailPages(trail, service.accounts(), templates, clock),
            new PairingPages(entrance.network(), entrance.port(), entrance.plainPort(), templates));
  }

  Gate gate() {
    return gate;
  }

  @Override
  public List<Feature> parts() {
    return parts;
  }
}
