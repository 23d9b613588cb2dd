package org.frisket.studio.store;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.osgi.util.NLS;
import org.postgresql.ds.PGSimpleDataSource;

/** PostgreSQL servers. */
public final class PostgresKind implements DatabaseKind {

	static final String BEGINS = "jdbc:postgresql:";

	/** In seconds. */
	private static final int CONNECT_WITHIN = 10;

	@Override
	public Database at(String address, Supplier<Optional<String>> password) throws IOException {
		PGSimpleDataSource source = new PGSimpleDataSource();
		try {
			source.setUrl(address);
		} catch (IllegalArgumentException e) {
			throw new IOException(NLS.bind(Messages.Databases_unknown, Databases.withoutSecrets(address)), e);
		}
		if (source.getApplicationName() == null) {
			source.setApplicationName("Frisket");
		}
		source.setConnectTimeout(CONNECT_WITHIN);
		source.setTcpKeepAlive(true);
		return new ServerDatabase(Databases.withoutSecrets(address), () -> {
			if (source.getPassword() == null) {
				password.get().ifPresent(source::setPassword);
			}
			return source.getConnection();
		});
	}
}
