/** The practice's own network: names, certificates, the page that makes a device trust them. */
@NullMarked
package kerfwright.app.network;

import org.jspecify.annotations.NullMarked;
