using System.Text.Json;
using Pattress.Working;

namespace Pattress.Jobs.Plans;

/// <summary>One step of the working, as every document has it.</summary>
public static class StepJson
{
    /// <summary>Its members, into the object that is open.</summary>
    public static void Write(Utf8JsonWriter json, Step step)
    {
        json.WriteString("symbol", step.Symbol);
        json.WriteString("formula", step.Formula);
        json.WriteString("numbers", step.Numbers);
        json.WriteNumber("value", step.Value);
        json.WriteString("unit", step.Unit);
        json.WriteString("clause", step.Clause);
    }
}
