/**
 * The way in over HTTP: routes, request bodies, problems. Only this package sees Javalin. It reads, checks and hands on; it never
 * decides anything.
 */
package pairwright.http;
