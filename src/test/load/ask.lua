-- Every request another question, or the same bodies to the address that does nothing. Arguments: the address, at which number to begin, and how many draws.
local sources = {"snare drum", "nylon guitar", "double bass", "trumpet", "tenor saxophone", "singing voice", "cello", "flute", "accordion",
  "banjo", "kick drum", "guitar amp", "violin", "grand piano", "drum kit", "harp", "clarinet", "cajon", "spoken voice"}
local rooms = {"small room", "church", "barn", "bedroom", "large room", "medium live room", "dry booth"}
local sounds = {"natural", "dark", "airy", "warm", "gritty"}
local beside = {"a singer", "the drums", "a trumpet"}
local n, path, draws = 0, "/", "0"

function init(args)
  path = args[1]
  n = tonumber(args[2])
  draws = args[3]
end

function request()
  n = n + 1
  local body = string.format('{"words": "%s in a %s, %s, next to %s at %.4f m", "draws": %s}', sources[n % #sources + 1], rooms[n % #rooms + 1],
    sounds[n % #sounds + 1], beside[n % #beside + 1], 1.5 + n % 39989 * 0.0001, draws)
  return wrk.format("POST", path, {["Content-Type"] = "application/json"}, body)
end

function done(summary, latency)
  local bad = summary.errors.status + summary.errors.connect + summary.errors.read + summary.errors.write + summary.errors.timeout
  io.write(string.format("RESULT %.2f %.3f %.3f %d\n", summary.requests * 1e6 / summary.duration, latency:percentile(50) / 1000, latency:percentile(99) / 1000, bad))
end
