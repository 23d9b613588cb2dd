package org.frisket.prepare.internal;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Function;

import org.frisket.geometry.Monitor;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.FontEntry;
import org.frisket.typography.source.FontSource;

/** A contributed source, made when it is first asked. One that throws counts as empty and is asked no more. */
public final class ContributedFontSource implements FontSource {

	private final Contribution<FontSource> contribution;
	private FontSource source;
	private ContributionException failure;

	public ContributedFontSource(Contribution<FontSource> contribution) {
		this.contribution = contribution;
	}

	@Override
	public String id() {
		return contribution.id();
	}

	@Override
	public List<FontEntry> fonts(Monitor monitor) {
		return ask(s -> s.fonts(monitor));
	}

	@Override
	public List<UnreadableFontException> broken(Monitor monitor) {
		List<UnreadableFontException> broken = ask(s -> s.broken(monitor));
		return failure().map(f -> List.of(new UnreadableFontException(id(), f.getMessage()))).orElse(broken);
	}

	@Override
	public List<FontEntry> kept(String sha256) {
		return ask(s -> s.kept(sha256));
	}

	/** Why it is not asked any more. */
	public synchronized Optional<ContributionException> failure() {
		return Optional.ofNullable(failure);
	}

	private <T> List<T> ask(Function<FontSource, List<T>> question) {
		try {
			FontSource asked = source();
			return asked == null ? List.of() : List.copyOf(question.apply(asked));
		} catch (CancellationException cancelled) {
			throw cancelled;
		} catch (RuntimeException | LinkageError failed) {
			setFailure(contribution.failed(failed));
			return List.of();
		}
	}

	private synchronized FontSource source() {
		if (source == null && failure == null) {
			try {
				source = contribution.create();
			} catch (ContributionException failed) {
				failure = failed;
			}
		}
		return failure == null ? source : null;
	}

	private synchronized void setFailure(ContributionException failed) {
		failure = failed;
	}
}
