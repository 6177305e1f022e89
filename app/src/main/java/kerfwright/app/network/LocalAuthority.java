package kerfwright.app.network;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerfwright.app.input.BadFile;
import kerfwright.app.storage.Private;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/**
 * The practice's own certificate authority (RFC 5280), made at first start. It can vouch for names
 * and addresses of a local network alone (name constraints), so that a device that trusts it trusts
 * it for nothing else. Keys are on the curve P-256; a server's certificate holds for 90 days and is
 * renewed when 30 are left.
 */
final class LocalAuthority {
  private static final Duration ITS_OWN = Duration.ofDays(3650);
  private static final Duration OF_A_SERVER = Duration.ofDays(90);
  private static final Duration RENEWED_AT = Duration.ofDays(30);
  private static final Duration CLOCKS_DIFFER = Duration.ofDays(1);
  private static final String SIGNED_BY = "SHA256withECDSA";
  private static final List<String> LOCAL_NAMES =
      List.of("localhost", "local", "lan", "internal", "home.arpa");
  private static final List<String> LOCAL_ADDRESSES =
      List.of(
          "10.0.0.0/255.0.0.0",
          "172.16.0.0/255.240.0.0",
          "192.168.0.0/255.255.0.0",
          "169.254.0.0/255.255.0.0",
          "127.0.0.0/255.0.0.0");

  private final Path folder;
  private final Clock clock;

  LocalAuthority(Path folder, Clock clock) {
    this.folder = folder;
    this.clock = clock;
  }

  /** The certificate and key for these names, made or renewed where that is due. */
  @SuppressWarnings("try") // the lock is held, not used
  Certificates of(OwnNames names) throws IOException {
    Private.folder(folder);
    // processes that share the folder make it once
    try (FileChannel turn = FileChannel.open(Private.file(at("turn")), StandardOpenOption.WRITE)) {
      // until the channel is closed
      turn.lock();
      if (!Files.exists(at("authority.crt"))) {
        makeAuthority(names);
      }
      X509Certificate authority = Pem.certificates(at("authority.crt")).get(0);
      if (!Files.exists(at("server.crt")) || due(names)) {
        makeServer(names, authority);
      }
      List<X509Certificate> chain = Pem.certificates(at("server.crt"));
      return new Certificates(chain, Pem.key(at("server.key")), authority);
    } catch (GeneralSecurityException | OperatorCreationException impossible) {
      throw new BadFile("network.not-made", impossible.toString());
    }
  }

  private Path at(String file) {
    return folder.resolve(file);
  }

  private boolean due(OwnNames names) throws IOException, GeneralSecurityException {
    X509Certificate now = Pem.certificates(at("server.crt")).get(0);
    Instant ends = now.getNotAfter().toInstant();
    if (clock.instant().plus(RENEWED_AT).isAfter(ends)) {
      return true;
    }
    Set<String> covered =
        now.getSubjectAlternativeNames().stream()
            .map(one -> String.valueOf(one.get(1)))
            .collect(Collectors.toSet());
    return !covered.containsAll(names.all());
  }

  private void makeAuthority(OwnNames names)
      throws IOException, GeneralSecurityException, OperatorCreationException {
    KeyPair pair = pair();
    X500Name name = new X500Name("CN=Kerfwright authority of " + names.names().get(0));
    X509v3CertificateBuilder made = builder(name, name, pair, ITS_OWN);
    List<GeneralSubtree> permitted = new ArrayList<>();
    Stream.concat(LOCAL_NAMES.stream(), names.names().stream())
        .distinct()
        .forEach(one -> permitted.add(subtree(GeneralName.dNSName, one)));
    LOCAL_ADDRESSES.forEach(one -> permitted.add(subtree(GeneralName.iPAddress, one)));
    made.addExtension(Extension.basicConstraints, true, new BasicConstraints(0));
    made.addExtension(
        Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign | KeyUsage.cRLSign));
    made.addExtension(
        Extension.nameConstraints,
        true,
        new NameConstraints(permitted.toArray(GeneralSubtree[]::new), null));
    made.addExtension(
        Extension.subjectKeyIdentifier,
        false,
        new JcaX509ExtensionUtils().createSubjectKeyIdentifier(pair.getPublic()));
    Pem.write(at("authority.key"), pair.getPrivate());
    Pem.write(at("authority.crt"), signed(made, pair.getPrivate()));
  }

  private static GeneralSubtree subtree(int kind, String name) {
    return new GeneralSubtree(new GeneralName(kind, name));
  }

  private void makeServer(OwnNames names, X509Certificate authority)
      throws IOException, GeneralSecurityException, OperatorCreationException {
    KeyPair pair = pair();
    X500Name issuer = X500Name.getInstance(authority.getSubjectX500Principal().getEncoded());
    X500Name name = new X500Name("CN=" + names.names().get(0));
    X509v3CertificateBuilder made = builder(issuer, name, pair, OF_A_SERVER);
    List<GeneralName> all = new ArrayList<>();
    names.names().forEach(one -> all.add(new GeneralName(GeneralName.dNSName, one)));
    names.addresses().forEach(one -> all.add(new GeneralName(GeneralName.iPAddress, one)));
    made.addExtension(
        Extension.subjectAlternativeName, false, new GeneralNames(all.toArray(GeneralName[]::new)));
    made.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
    made.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature));
    made.addExtension(
        Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
    made.addExtension(
        Extension.authorityKeyIdentifier,
        false,
        new JcaX509ExtensionUtils().createAuthorityKeyIdentifier(authority));
    X509Certificate server = signed(made, Pem.key(at("authority.key")));
    Pem.write(at("server.key"), pair.getPrivate());
    Pem.write(at("server.crt"), server, authority);
  }

  private X509v3CertificateBuilder builder(
      X500Name issuer, X500Name name, KeyPair pair, Duration howLong) {
    Instant now = clock.instant();
    return new JcaX509v3CertificateBuilder(
        issuer,
        new BigInteger(127, new SecureRandom()).setBit(126),
        Date.from(now.minus(CLOCKS_DIFFER)),
        Date.from(now.plus(howLong)),
        name,
        pair.getPublic());
  }

  private static X509Certificate signed(X509v3CertificateBuilder made, PrivateKey by)
      throws GeneralSecurityException, OperatorCreationException {
    return new JcaX509CertificateConverter()
        .getCertificate(made.build(new JcaContentSignerBuilder(SIGNED_BY).build(by)));
  }

  private static KeyPair pair() throws GeneralSecurityException {
    KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
    generator.initialize(new ECGenParameterSpec("secp256r1"));
    return generator.generateKeyPair();
  }
}
