/**
 * Reading of job files that an earlier Frisket wrote.
 *
 * <p>The format's version is the last part of the namespace, {@code urn:frisket:job:1}. Within a version it only grows;
 * what cannot be said by adding gets a new version and one {@link org.frisket.model.migration.Migration} from the
 * version before. Migrations work on the stream of XML events before the model sees it, so that the places in error
 * messages are those of the file.
 */
package org.frisket.model.migration;
