package kerfwright.app.network;

import java.io.IOException;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.security.PrivateKey;
import java.security.Signature;
import java.security.cert.X509Certificate;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import kerfwright.app.input.BadFile;
import org.jspecify.annotations.Nullable;

/**
 * What the server shows, and its key.
 *
 * @param chain the server's certificate first
 * @param key its key
 * @param authority the practice's own authority, null where the certificate was given
 */
record Certificates(
    List<X509Certificate> chain, PrivateKey key, @Nullable X509Certificate authority) {
  Certificates {
    chain = List.copyOf(chain);
  }

  /** A certificate with its chain and a key, as PEM files. */
  static Certificates given(Path certificate, Path key) throws IOException {
    Certificates given = new Certificates(Pem.certificates(certificate), Pem.key(key), null);
    if (!given.keyFits()) {
      throw new BadFile("network.other-key");
    }
    return given;
  }

  /** Whether what the key signs is held for signed by the certificate. */
  private boolean keyFits() {
    String kind =
        switch (key.getAlgorithm()) {
          case "EC", "ECDSA" -> "SHA256withECDSA";
          case "RSA" -> "SHA256withRSA";
          default -> key.getAlgorithm();
        };
    try {
      byte[] any = {1, 2, 3};
      Signature signing = Signature.getInstance(kind);
      signing.initSign(key);
      signing.update(any);
      Signature verifying = Signature.getInstance(kind);
      verifying.initVerify(chain.get(0));
      verifying.update(any);
      return verifying.verify(signing.sign());
    } catch (GeneralSecurityException another) {
      return false;
    }
  }

  /** In memory only: it needs no password, and is given an empty one. */
  KeyStore store() {
    try {
      KeyStore store = KeyStore.getInstance("PKCS12");
      store.load(null, new char[0]);
      store.setKeyEntry("server", key, new char[0], chain.toArray(X509Certificate[]::new));
      return store;
    } catch (GeneralSecurityException | IOException unfit) {
      throw new IllegalStateException("certificate and key do not fit", unfit);
    }
  }

  /** SHA-256 of a certificate, as browsers and devices show it. */
  static String fingerprint(X509Certificate certificate) {
    try {
      byte[] sum = MessageDigest.getInstance("SHA-256").digest(certificate.getEncoded());
      return HexFormat.ofDelimiter(":").formatHex(sum).toUpperCase(Locale.ROOT);
    } catch (GeneralSecurityException unreadable) {
      throw new IllegalStateException(unreadable);
    }
  }
}
