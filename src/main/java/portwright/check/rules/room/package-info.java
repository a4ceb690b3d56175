/** Rules on gas supply, room and people, and on the temperature that permits gas. They forbid lighting, never drilling. */
package portwright.check.rules.room;
