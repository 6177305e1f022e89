package kerfwright.app.network;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.PrivateKey;
import java.security.cert.CertificateException;
import java.security.cert.X509Certificate;
import java.util.ArrayList;
import java.util.List;
import kerfwright.app.input.BadFile;
import kerfwright.app.storage.Private;
import org.bouncycastle.asn1.pkcs.PrivateKeyInfo;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.openssl.PEMKeyPair;
import org.bouncycastle.openssl.PEMParser;
import org.bouncycastle.openssl.jcajce.JcaPEMKeyConverter;
import org.bouncycastle.openssl.jcajce.JcaPEMWriter;
import org.bouncycastle.openssl.jcajce.JcaPKCS8Generator;

/** Certificates and keys as PEM files (RFC 7468). */
final class Pem {
  private Pem() {}

  static String text(Object... parts) throws IOException {
    StringWriter text = new StringWriter();
    try (JcaPEMWriter pem = new JcaPEMWriter(text)) {
      for (Object part : parts) {
        // PKCS #8 (RFC 5958) names the curve with the key
        pem.writeObject(part instanceof PrivateKey key ? new JcaPKCS8Generator(key, null) : part);
      }
    }
    return text.toString();
  }

  /** A file its owner alone reads. */
  static void write(Path file, Object... parts) throws IOException {
    Files.writeString(Private.file(file), text(parts));
  }

  /** All certificates of a file, the server's first. */
  static List<X509Certificate> certificates(Path file) throws IOException {
    List<X509Certificate> all = new ArrayList<>();
    try (PEMParser pem = new PEMParser(new StringReader(Files.readString(file)))) {
      for (Object one = pem.readObject(); one != null; one = pem.readObject()) {
        if (one instanceof X509CertificateHolder holder) {
          all.add(new JcaX509CertificateConverter().getCertificate(holder));
        }
      }
    } catch (CertificateException unreadable) {
      throw new BadFile("network.unreadable-certificate", file.toString());
    }
    if (all.isEmpty()) {
      throw new BadFile("network.no-certificate", file.toString());
    }
    return all;
  }

  static PrivateKey key(Path file) throws IOException {
    try (PEMParser pem = new PEMParser(new StringReader(Files.readString(file)))) {
      for (Object one = pem.readObject(); one != null; one = pem.readObject()) {
        if (one instanceof PEMKeyPair pair) {
          return new JcaPEMKeyConverter().getKeyPair(pair).getPrivate();
        }
        if (one instanceof PrivateKeyInfo info) {
          return new JcaPEMKeyConverter().getPrivateKey(info);
        }
      }
    }
    throw new BadFile("network.no-key", file.toString());
  }
}
