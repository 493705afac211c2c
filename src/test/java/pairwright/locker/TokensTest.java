package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TokensTest {
    private static final Instant NOW = Instant.parse("2031-03-01T08:00:00Z");

    @TempDir
    Path folder;

    private Database database;
    private Tokens tokens;

    @BeforeEach
    void open() {
        Clock clock = Clock.fixed(NOW, ZoneOffset.UTC);
        database = Database.open(Place.in(folder));
        Migrations.run(database, clock);
        tokens = new Tokens(database, clock);
    }

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void whoHoldsATokenIsKnownByIt() {
        String secret = tokens.add("Wren", Role.ENGINEER);
        assertEquals(Optional.of(new Token("Wren", Role.ENGINEER, NOW)), tokens.of(secret));
        assertNotEquals(secret, tokens.add("Linnet", Role.READER));
        assertEquals(List.of(new Token("Linnet", Role.READER, NOW), new Token("Wren", Role.ENGINEER, NOW)), tokens.all());
    }

    @Test
    void onlyAHashIsOnTheDisk() throws Exception {
        String secret = tokens.add("Wren", Role.ENGINEER);
        String hash = database.read(sql -> sql.first("SELECT hash FROM token", row -> row.getString(1)).orElseThrow());
        assertEquals(HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.US_ASCII))), hash);
        database.close();
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) {
                assertFalse(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).contains(secret), file + " holds the token");
            }
        }
    }

    @Test
    void aTokenHas160BitsInCharactersThatAreNotMistaken() {
        for (int i = 0; i < 200; i++) {
            assertTrue(tokens.add("Wren " + i, Role.READER).matches("[0-9a-hjkmnp-tv-z]{32}"));
        }
    }

    @Test
    void whatIsMistakenWhenCopiedByHandIsReadAsItWasMeant() {
        String secret = tokens.add("Wren", Role.READER);
        String byHand = secret.toUpperCase(Locale.ROOT).replace('0', 'O').replace('1', 'I').replaceAll("(.{8})(?=.)", "$1-");
        assertEquals("Wren", tokens.of(" " + byHand + " ").orElseThrow().name());
        assertEquals("Wren", tokens.of(secret.replace('1', 'l')).orElseThrow().name());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "0", "wrong", "00000000000000000000000000000000", "0000000000000000000000000000000u", "000000000000000000000000000000000",
            "' OR 1=1 --", "ä0000000000000000000000000000000"})
    void anythingElseIsNobodys(String text) {
        tokens.add("Wren", Role.INSTRUCTOR);
        assertEquals(Optional.empty(), tokens.of(text));
    }

    @Test
    void noTokenIsNobodys() {
        assertEquals(Optional.empty(), tokens.of(null));
    }

    @Test
    void aCharacterOffIsNobodys() {
        String secret = tokens.add("Wren", Role.INSTRUCTOR);
        for (int at = 0; at < secret.length(); at++) {
            char other = secret.charAt(at) == 'z' ? 'y' : 'z';
            assertEquals(Optional.empty(), tokens.of(secret.substring(0, at) + other + secret.substring(at + 1)));
        }
    }

    @Test
    void aRevokedTokenIsWorthlessAtOnceAndItsNameIsFree() {
        String secret = tokens.add("Wren", Role.ENGINEER);
        assertTrue(tokens.of(secret).isPresent());
        tokens.revoke("wren");
        assertEquals(Optional.empty(), tokens.of(secret));
        assertEquals(List.of(), tokens.all());
        String next = tokens.add("Wren", Role.READER);
        assertEquals(Optional.empty(), tokens.of(secret));
        assertEquals(Role.READER, tokens.of(next).orElseThrow().role());
    }

    @Test
    void revokedByAnotherProgramItWorksForASecondAtMost() throws Exception {
        String secret = tokens.add("Wren", Role.ENGINEER);
        assertTrue(tokens.of(secret).isPresent());
        try (Database other = Database.open(Place.in(folder))) {
            new Tokens(other, Clock.systemUTC()).revoke("Wren");
        }
        long revoked = System.nanoTime();
        while (tokens.of(secret).isPresent()) {
            assertTrue(System.nanoTime() - revoked < Duration.ofSeconds(2).toNanos(), "it still works");
            Thread.sleep(20);
        }
    }

    @Test
    void aTokenInUseIsNotLookedUpEachTime() {
        String secret = tokens.add("Wren", Role.ENGINEER);
        assertTrue(tokens.of(secret).isPresent());
        database.write(sql -> sql.run("DELETE FROM token"));
        assertTrue(tokens.of(secret).isPresent(), "it was looked up again within the second");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "-", "a\tb", "a\nb", "<b>", "a/b", "a:b", "x123456789x123456789x123456789x123456789x123456789x123456789x"})
    void aNameThatCannotBeReadOutIsRefused(String name) {
        LockerFault.Unusable fault = assertThrows(LockerFault.Unusable.class, () -> tokens.add(name, Role.READER));
        assertEquals("/name", fault.faults().get(0).at());
        assertFalse(fault.getMessage().chars().anyMatch(Character::isISOControl), fault.getMessage());
        assertEquals(List.of(), tokens.all());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Wren", "W", "Wren at the barn", "O'Hara", "Søren-Åke 2.", "tablet_3", "x123456789x123456789x123456789x123456789x123456789x123456789"})
    void otherNamesAreNot(String name) {
        String secret = tokens.add(" " + name + " ", Role.READER);
        assertEquals(name, tokens.of(secret).orElseThrow().name());
    }

    @Test
    void aNameIsGivenOnceWhateverItsCase() {
        String first = tokens.add("Wren", Role.READER);
        LockerFault.Unusable fault = assertThrows(LockerFault.Unusable.class, () -> tokens.add("WREN", Role.INSTRUCTOR));
        assertEquals("There is a token named \"Wren\" already. Revoke it first, or give another name", fault.getMessage());
        assertEquals(Role.READER, tokens.of(first).orElseThrow().role());
    }

    @Test
    void revokingWhatIsNotThereSaysSo() {
        assertEquals("There is no token named \"Wren\". List them to see the names", assertThrows(LockerFault.NotThere.class, () -> tokens.revoke("Wren")).getMessage());
    }
}
