package org.frisket.studio.store;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.regex.Pattern;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.osgi.util.NLS;
import org.frisket.studio.StudioFolder;

/**
 * Which database a studio uses: the one in its folder, as long as neither the studio's preferences nor whoever began this
 * process name the address of another. Safe for use by several threads.
 */
public final class Databases {

	/** The preference of a studio that holds the address. */
	public static final String PREFERENCE = "database";

	/** Holds the password for whoever has no other place for it. */
	public static final String PASSWORD_VARIABLE = "FRISKET_DATABASE_PASSWORD";

	private static final String POINT = "org.frisket.orders.stores";
	private static final Pattern PASSWORD = Pattern.compile("[?&](?i:password|passfile)=|//[^/@]*:[^/@]*@");

	private static final Map<String, Database> KNOWN = new ConcurrentHashMap<>();
	private static volatile String chosen = "";
	private static volatile Function<String, Optional<String>> passwords = address -> Optional.empty();

	private Databases() {
	}

	/** From now on this process uses the database at an address, whatever the studio prefers; empty to take it back. */
	public static void choose(Optional<String> address) {
		chosen = address.map(String::strip).orElse("");
	}

	/** Who knows passwords, by address; the environment variable {@value #PASSWORD_VARIABLE} comes first. */
	public static void askForPasswords(Function<String, Optional<String>> keeper) {
		passwords = keeper;
	}

	/**
	 * The address that is used for a studio; empty for the database in its folder.
	 *
	 * @throws IOException if the preferences cannot be read
	 */
	public static Optional<String> address(StudioFolder studio) throws IOException {
		return chosen.isEmpty() ? studio.preferences().get(PREFERENCE).map(String::strip).filter(text -> !text.isEmpty())
				: Optional.of(chosen);
	}

	/**
	 * Has all desks of a studio use the database at an address from now on.
	 *
	 * @param address empty for the database in the studio's folder
	 * @throws IOException if there is a password in it, which would stand in a file for all to read; if nothing here knows
	 *                     such addresses; or if the preferences cannot be written
	 */
	public static void prefer(StudioFolder studio, Optional<String> address) throws IOException {
		if (address.isPresent()) {
			if (PASSWORD.matcher(address.get()).find()) {
				throw new IOException(Messages.Databases_password);
			}
			at(address.get());
		}
		studio.openForWriting();
		studio.preferences().put(PREFERENCE, address.orElse(""));
	}

	/** @throws IOException if the address is not one that anything here knows; the message names it */
	static Database of(StudioFolder studio) throws IOException {
		Optional<String> address = address(studio);
		return address.isEmpty() ? new FileDatabase(studio) : at(address.get());
	}

	private static Database at(String address) throws IOException {
		Database known = KNOWN.get(address);
		if (known == null) {
			Database found = kind(address).at(address, () -> password(address));
			known = KNOWN.putIfAbsent(address, found);
			return known == null ? found : known;
		}
		return known;
	}

	private static Optional<String> password(String address) {
		String variable = System.getenv(PASSWORD_VARIABLE);
		return variable != null && !variable.isEmpty() ? Optional.of(variable) : passwords.apply(address);
	}

	private static DatabaseKind kind(String address) throws IOException {
		IExtensionRegistry registry = RegistryFactory.getRegistry();
		// there is none in plain Java
		IConfigurationElement[] contributed = registry == null ? new IConfigurationElement[0]
				: registry.getConfigurationElementsFor(POINT);
		for (IConfigurationElement element : contributed) {
			String begins = element.getAttribute("begins");
			if (begins != null && address.startsWith(begins)) {
				try {
					return (DatabaseKind) element.createExecutableExtension("class");
				} catch (CoreException | ClassCastException | LinkageError e) {
					throw new IOException(NLS.bind(Messages.Databases_broken, element.getContributor().getName(), e), e);
				}
			}
		}
		if (registry == null && address.startsWith(PostgresKind.BEGINS)) {
			return new PostgresKind();
		}
		throw new IOException(NLS.bind(Messages.Databases_unknown, withoutSecrets(address)));
	}

	/** An address as it may be shown. */
	static String withoutSecrets(String address) {
		return address.replaceAll("\\?.*", "").replaceAll("//[^/@]*@", "//");
	}
}
