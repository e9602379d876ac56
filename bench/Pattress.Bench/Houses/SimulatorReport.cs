namespace Pattress.Bench;
internal static class SimulatorReport { public static void Write(string folder, string docs) { } }
