package org.frisket.ui.orders.internal.place;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The address of a database on a server, in parts that people know.
 *
 * @param server   its name, with a port behind a colon if it is not the usual one; or a whole address that begins with
 *                 {@value #ANY}, when the other parts do not count
 * @param database its name on the server
 * @param user     who the server takes us for
 * @param more     what else stands in the address, each behind an ampersand; nobody changes it here
 */
public record ServerAddress(String server, String database, String user, String more) {

	static final String ANY = "jdbc:"; //$NON-NLS-1$

	private static final String BEGINS = "jdbc:postgresql://"; //$NON-NLS-1$
	private static final Pattern PARTS = Pattern.compile(Pattern.quote(BEGINS) + "([^/?]+)/([^/?]*)(?:\\?(.*))?"); //$NON-NLS-1$
	private static final Pattern SERVER = Pattern
			.compile("[\\p{L}\\p{N}._-]+(:\\d{1,5})?|\\[[0-9a-fA-F:.]+\\](:\\d{1,5})?"); //$NON-NLS-1$
	private static final String USER = "user="; //$NON-NLS-1$

	public ServerAddress {
		server = server.strip();
		database = database.strip();
		user = user.strip();
	}

	/** Of an address; one of another kind is whole. */
	public static ServerAddress of(String address) {
		Matcher parts = PARTS.matcher(address);
		if (!parts.matches()) {
			return new ServerAddress(address, "", "", ""); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
		String user = ""; //$NON-NLS-1$
		StringBuilder more = new StringBuilder();
		for (String each : parts.group(3) == null ? new String[0] : parts.group(3).split("&")) { //$NON-NLS-1$
			if (each.startsWith(USER)) {
				user = URLDecoder.decode(each.substring(USER.length()), StandardCharsets.UTF_8);
			} else if (!each.isEmpty()) {
				more.append('&').append(each);
			}
		}
		return new ServerAddress(parts.group(1), URLDecoder.decode(parts.group(2), StandardCharsets.UTF_8), user,
				more.toString());
	}

	public boolean isWhole() {
		return server.startsWith(ANY);
	}

	/** What is missing or wrong, in words; empty if it is an address. */
	public Optional<String> problem() {
		if (isWhole()) {
			return Optional.empty();
		}
		if (!SERVER.matcher(server).matches()) {
			return Optional.of(Messages.ServerAddress_server);
		}
		if (database.isEmpty()) {
			return Optional.of(Messages.ServerAddress_database);
		}
		return user.isEmpty() ? Optional.of(Messages.ServerAddress_user) : Optional.empty();
	}

	/** As it is kept and connected to. There is never a password in it. */
	public String text() {
		return isWhole() ? server : BEGINS + server + '/' + encoded(database) + '?' + USER + encoded(user) + more;
	}

	private static String encoded(String text) {
		return URLEncoder.encode(text, StandardCharsets.UTF_8);
	}
}
