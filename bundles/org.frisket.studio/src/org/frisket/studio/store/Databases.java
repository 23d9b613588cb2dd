package org.frisket.studio.store;

import java.io.IOException;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
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
	private static volatile PasswordKeeper passwords;

	private Databases() {
	}

	/** From now on this process uses the database at an address, whatever the studio prefers; empty to take it back. */
	public static void choose(Optional<String> address) {
		chosen = address.map(String::strip).orElse("");
	}

	/** Who knows passwords; the environment variable {@value #PASSWORD_VARIABLE} comes first. Usually one is contributed. */
	public static void askForPasswords(PasswordKeeper keeper) {
		passwords = keeper;
	}

	/** Whether whoever began this process has said which database it uses, so that the studio's preference does not count. */
	public static boolean isChosen() {
		return !chosen.isEmpty();
	}

	/**
	 * Looks something up in the database at an address, whichever is used otherwise. Nothing is made there.
	 *
	 * @param password empty for the one that is known here
	 * @throws IOException with a message for people, if it cannot be used
	 */
	public static <T, X extends Exception> T look(String address, Optional<String> password, Work<T, X> work)
			throws IOException, X {
		Database database = kind(address).at(address, password.isPresent() ? () -> password : password(address));
		try (Session session = database.open(Set.of(), Duration.ZERO)) {
			return session.transaction(work, false);
		} finally {
			database.end();
		}
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
			Database found = kind(address).at(address, password(address));
			known = KNOWN.putIfAbsent(address, found);
			return known == null ? found : known;
		}
		return known;
	}

	/** Asked each time somebody connects. @throws IOException if a keeper is contributed that does not work */
	private static Supplier<Optional<String>> password(String address) throws IOException {
		String variable = System.getenv(PASSWORD_VARIABLE);
		if (variable != null && !variable.isEmpty()) {
			return () -> Optional.of(variable);
		}
		if (passwords == null) {
			passwords = contributedKeeper();
		}
		return () -> passwords.password(address);
	}

	private static PasswordKeeper contributedKeeper() throws IOException {
		for (IConfigurationElement element : contributed()) {
			if (element.getName().equals("passwords")) {
				return made(element, PasswordKeeper.class);
			}
		}
		return address -> Optional.empty();
	}

	private static IConfigurationElement[] contributed() {
		IExtensionRegistry registry = RegistryFactory.getRegistry();
		// there is none in plain Java
		return registry == null ? new IConfigurationElement[0] : registry.getConfigurationElementsFor(POINT);
	}

	private static DatabaseKind kind(String address) throws IOException {
		for (IConfigurationElement element : contributed()) {
			String begins = element.getAttribute("begins");
			if (begins != null && address.startsWith(begins)) {
				return made(element, DatabaseKind.class);
			}
		}
		if (RegistryFactory.getRegistry() == null && address.startsWith(PostgresKind.BEGINS)) {
			return new PostgresKind();
		}
		throw new IOException(NLS.bind(Messages.Databases_unknown, withoutSecrets(address)));
	}

	private static <T> T made(IConfigurationElement element, Class<T> type) throws IOException {
		try {
			return type.cast(element.createExecutableExtension("class"));
		} catch (CoreException | ClassCastException | LinkageError e) {
			throw new IOException(NLS.bind(Messages.Databases_broken, element.getContributor().getName(), e), e);
		}
	}

	/** An address as it may be shown. */
	public static String withoutSecrets(String address) {
		return address.replaceAll("\\?.*", "").replaceAll("//[^/@]*@", "//");
	}
}
