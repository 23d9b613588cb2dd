package org.frisket.ui.orders.internal.place;

import java.io.IOException;
import java.net.URL;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.security.storage.ISecurePreferences;
import org.eclipse.equinox.security.storage.SecurePreferencesFactory;
import org.eclipse.equinox.security.storage.StorageException;
import org.eclipse.equinox.security.storage.provider.IProviderHints;
import org.frisket.studio.store.PasswordKeeper;
import org.osgi.framework.FrameworkUtil;

/**
 * Passwords of order books, by address: for as long as this program runs, or for longer in the secure storage of the
 * platform, which the machine's keyring locks or, where there is none, a word that people are asked for once. None ever
 * stands in a file in the clear. Waits for people, so it is none for the UI thread.
 */
public final class KeptPasswords implements PasswordKeeper {

	/** As plugin.xml has it; the storage knows it in small letters. */
	private static final String OWN_LOCK = "org.frisket.ui.orders.masterpassword"; //$NON-NLS-1$
	private static final String FILE = "passwords"; //$NON-NLS-1$
	private static final String NODE = "order-book"; //$NON-NLS-1$

	private static final Map<String, String> REMEMBERED = new ConcurrentHashMap<>();
	/** Somebody would not unlock them; nobody is asked a second time. */
	private static final Set<String> LOCKED = new HashSet<>();

	@Override
	public Optional<String> password(String address) {
		String remembered = REMEMBERED.get(address);
		return remembered != null ? Optional.of(remembered) : unlocked(address);
	}

	private static Optional<String> unlocked(String address) {
		synchronized (LOCKED) {
			if (REMEMBERED.containsKey(address) || LOCKED.contains(address)) {
				return Optional.ofNullable(REMEMBERED.get(address));
			}
			try {
				ISecurePreferences storage = storage(Map.of());
				String kept = storage == null ? null : storage.get(address, null);
				if (kept != null) {
					REMEMBERED.put(address, kept);
				}
				return Optional.ofNullable(kept);
			} catch (IOException | StorageException notUnlocked) {
				LOCKED.add(address);
				return Optional.empty();
			}
		}
	}

	/** For as long as this program runs. */
	static void remember(String address, String password) {
		REMEMBERED.put(address, password);
	}

	/**
	 * For longer.
	 *
	 * @return whether it is kept; if not it is remembered for as long as this program runs
	 */
	public static boolean keep(String address, String password) {
		remember(address, password);
		synchronized (LOCKED) {
			return put(address, password, Map.of())
					// a keyring that is there in name only
					|| put(address, password, Map.of(IProviderHints.REQUIRED_MODULE_ID, OWN_LOCK));
		}
	}

	private static boolean put(String address, String password, Map<String, Object> hints) {
		try {
			ISecurePreferences storage = storage(hints);
			if (storage == null) {
				return false;
			}
			storage.put(address, password, true);
			storage.flush();
			return true;
		} catch (IOException | StorageException notLocked) {
			return false;
		}
	}

	/** @throws IOException if it cannot be written that it is forgotten */
	static void forget(String address) throws IOException {
		REMEMBERED.remove(address);
		synchronized (LOCKED) {
			ISecurePreferences storage = storage(Map.of());
			if (storage != null) {
				storage.remove(address);
				storage.flush();
			}
		}
	}

	/** Null where there is no place for it, as on the command line. */
	private static ISecurePreferences storage(Map<String, Object> hints) throws IOException {
		if (Platform.getInstanceLocation() == null || !Platform.getInstanceLocation().isSet()) {
			return null;
		}
		URL file = Platform.getStateLocation(FrameworkUtil.getBundle(KeptPasswords.class)).append(FILE).toFile().toURI()
				.toURL();
		return SecurePreferencesFactory.open(file, hints).node(NODE);
	}

	/** As if the program were started again. */
	public static void forgetWhatIsRemembered() {
		REMEMBERED.clear();
		synchronized (LOCKED) {
			LOCKED.clear();
		}
	}
}
