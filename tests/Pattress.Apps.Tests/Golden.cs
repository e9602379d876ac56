namespace Pattress.Apps.Tests;

/// <summary>
/// Texts that a person has read and accepted. With PATTRESS_GOLDEN=write a run writes them into the source instead,
/// to be read before they are committed; such a run fails, so that it cannot pass for a test.
/// </summary>
internal static class Golden
{
    public static void Is(string name, string text)
    {
        string file = Path.Combine(Samples.Root, "tests", "Pattress.Apps.Tests", "Golden", name);
        if (Environment.GetEnvironmentVariable("PATTRESS_GOLDEN") == "write")
        {
            File.WriteAllText(file, text);
            Assert.Fail($"wrote {name}; read it");
        }
        Assert.Equal(File.ReadAllText(file), text);
    }
}
