namespace Pattress.Browser.Tests;

/// <summary>One change in the demo house that turns a verdict.</summary>
/// <param name="Then">The verdict's word after it.</param>
public sealed record DemoLoad(string Item, string Field, string Value, string Then);

/// <summary>What the tests change in the demo house.</summary>
public static class Demo
{
    public static DemoLoad Load { get; } = new("breast-mirror", "mass_kg", "90", "Not here");
}
