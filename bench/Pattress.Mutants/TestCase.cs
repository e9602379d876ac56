using System.Collections;
using System.Reflection;

namespace Pattress.Mutants;

/// <summary>One test with its data, run straight: no runner, no parallelism.</summary>
internal sealed record TestCase(Type Class, MethodInfo Method, object?[] Data, string Name)
{
    /// <summary>All tests of some namespaces, in a fixed order. Left out: explicit ones, classes that want fixtures.</summary>
    internal static List<TestCase> All(Assembly tests, string[] spaces) =>
        [.. tests.GetTypes().Where(t => spaces.Contains(t.Namespace) && t.GetConstructor([]) != null && !t.IsAbstract).OrderBy(t => t.FullName, StringComparer.Ordinal)
            .SelectMany(t => t.GetMethods().OrderBy(m => m.Name, StringComparer.Ordinal).SelectMany(m => Of(t, m)))];

    /// <summary>Null when it passes.</summary>
    internal string? Run()
    {
        try
        {
            object instance = Activator.CreateInstance(Class)!;
            object? result = Method.Invoke(instance, [.. Method.GetParameters().Select((p, i) => Fit(Data[i], p.ParameterType))]);
            if (result is Task task) task.GetAwaiter().GetResult();
            (instance as IDisposable)?.Dispose();
            return null;
        }
        catch (Exception e)
        {
            return (e is TargetInvocationException { InnerException: { } inner } ? inner : e).GetType().Name;
        }
    }

    private static object? Fit(object? value, Type type) => value is IConvertible && value.GetType() != type && Nullable.GetUnderlyingType(type) == null && typeof(IConvertible).IsAssignableFrom(type) && !type.IsEnum
        ? Convert.ChangeType(value, type, System.Globalization.CultureInfo.InvariantCulture) : value;

    private static IEnumerable<TestCase> Of(Type type, MethodInfo method)
    {
        var marks = method.GetCustomAttributes().ToList();
        var fact = marks.FirstOrDefault(a => a.GetType().Name is "FactAttribute" or "TheoryAttribute");
        if (fact == null || (bool)fact.GetType().GetProperty("Explicit")!.GetValue(fact)!) yield break;
        if (fact.GetType().Name == "FactAttribute") { yield return new(type, method, [], $"{type.Name}.{method.Name}"); yield break; }
        int n = 0;
        foreach (object?[] data in marks.SelectMany(a => Rows(a, type))) yield return new(type, method, data, $"{type.Name}.{method.Name}[{n++}]");
    }

    private static IEnumerable<object?[]> Rows(Attribute mark, Type type)
    {
        if (mark.GetType().Name == "InlineDataAttribute") return [(object?[])mark.GetType().GetProperty("Data")!.GetValue(mark)!];
        if (mark.GetType().Name != "MemberDataAttribute") return [];
        string name = (string)mark.GetType().GetProperty("MemberName")!.GetValue(mark)!;
        var member = ((Type?)mark.GetType().GetProperty("MemberType")!.GetValue(mark) ?? type).GetMember(name, BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.FlattenHierarchy)[0];
        object? rows = member switch { PropertyInfo p => p.GetValue(null), FieldInfo f => f.GetValue(null), MethodInfo m => m.Invoke(null, null), _ => null };
        return ((IEnumerable)rows!).Cast<object>().Select(Row);
    }

    private static object?[] Row(object row) => row as object?[] ?? (object?[])row.GetType().GetInterfaces().First(i => i.Name == "ITheoryDataRow").GetMethod("GetData")!.Invoke(row, null)!;
}
