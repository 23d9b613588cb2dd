/** What all verbs share: words as values, refusals, exit statuses, the studio they work for. */
package org.frisket.cli.line;
