/**
 * From what was read to a job: {@link org.frisket.imports.job.ArtTaker} makes layers and elements of imported art by
 * {@link org.frisket.imports.job.ArtRules} and repairs them on the way, if that is wanted.
 */
package org.frisket.imports.job;
