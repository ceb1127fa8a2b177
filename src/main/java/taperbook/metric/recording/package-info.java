/**
 * A session or range test prepared for metrics: channels, drawn courses, events, and the collector
 * that gives each number its caveats.
 */
@NullMarked
package taperbook.metric.recording;

import org.jspecify.annotations.NullMarked;
